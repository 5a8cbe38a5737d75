package club.yearline.effectivity;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.testing.Dice;
import club.yearline.testing.Seeds;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What holds for every catalogue, whatever it records. */
class CatalogueLawsTest {

  private static final int SEEDS = 200;

  @Test
  void everyPositionHasExactlyOneStateForEachFeature() {
    Seeds.check(SEEDS, (records, dice) -> everywhere(records).forEach(CatalogueLawsTest::isWhole));
  }

  @Test
  void theOrderOfTheRecordsChangesNothing() {
    Seeds.check(
        SEEDS,
        (records, dice) -> {
          Records shuffled =
              Records.of(dice.some(records.entries(), records.size(), records.size()), List.of());
          List<String> before = texts(records, Catalogue.of(records));
          assertThat(texts(records, Catalogue.of(shuffled))).isEqualTo(before);
        });
  }

  @Test
  void splittingABlockChangesNoAnswer() {
    Seeds.check(
        SEEDS,
        (records, dice) -> {
          Records split = Splitting.of(records, dice);
          List<String> before = texts(records, Catalogue.of(records));
          assertThat(texts(records, Catalogue.of(split))).isEqualTo(before);
        });
  }

  @Test
  void aLaterCleanCutInNeverChangesAnAnswerBeforeIt() {
    Seeds.check(SEEDS, CatalogueLawsTest::laterCutIn);
  }

  private static void laterCutIn(Records records, Dice dice) {
    Change like = dice.pick(records.changes());
    String variant = dice.pick(like.cutIns()).variant();
    VariantModel old = Catalogue.of(records).model(variant).orElseThrow();
    int[] years = old.years();
    if (years.length == 0) {
      return;
    }
    int year = years[dice.between(0, years.length - 1)];
    CutIn clean = new CutIn(variant, false, year, year, null, null, null);
    Change added =
        new Change(
            "later", like.feature(), "Later", null, like.offering(), List.of(clean), List.of());
    Timeline now = timeline(with(records, added), variant, like.feature());
    if (changesTheNext(now)) {
      return;
    }
    Timeline before = old.timeline(like.feature()).orElseThrow();
    for (Position position : positions(records, variant)) {
      if (position.year() != null && position.year() < year) {
        assertThat(text(now.at(position))).isEqualTo(text(before.at(position)));
      }
    }
  }

  /** A change whose beginning nobody knows begins no earlier than the one before it settles. */
  private static boolean changesTheNext(Timeline timeline) {
    List<Step> steps = timeline.steps();
    int place = timeline.changes().stream().map(Change::key).toList().indexOf("later");
    return place + 1 < steps.size() && steps.get(place + 1).first() == null;
  }

  private static Timeline timeline(Records records, String variant, String feature) {
    return Catalogue.of(records).model(variant).orElseThrow().timeline(feature).orElseThrow();
  }

  private static Records with(Records records, Change added) {
    List<Entry> entries = new ArrayList<>(records.entries());
    entries.add(added);
    return Records.of(entries, records.pictures());
  }

  /** Every year and every serial of the variant's production. */
  private static List<Position> positions(Records records, String key) {
    Catalogue catalogue = Catalogue.of(records);
    VariantModel model = catalogue.model(key).orElseThrow();
    SlowSerials serials = new SlowSerials(records);
    List<Position> positions = new ArrayList<>();
    IntStream.of(model.years()).forEach(y -> positions.add(Position.of(model.variant(), y)));
    for (SerialBlock block : model.blocks()) {
      Series series = catalogue.series(block.series()).orElseThrow();
      for (Serial serial : serials.all(block.series())) {
        if (serials.holds(block, serial)) {
          positions.add(Position.of(model.variant(), block.year(), series, serial));
        }
      }
    }
    return positions;
  }

  private static List<List<Answer>> everywhere(Records records) {
    Catalogue catalogue = Catalogue.of(records);
    return positions(records).map(catalogue::expected).toList();
  }

  private static Stream<Position> positions(Records records) {
    return records.variants().stream().flatMap(v -> positions(records, v.key()).stream());
  }

  private static List<String> texts(Records records, Catalogue catalogue) {
    return positions(records)
        .map(p -> p + " " + catalogue.expected(p).stream().map(CatalogueLawsTest::text).toList())
        .toList();
  }

  /** All that an answer says; airframes to a millionth, since their parts are summed in pieces. */
  private static String text(Answer answer) {
    StringBuilder out =
        new StringBuilder(answer.feature().key()).append(' ').append(answer.state());
    answer
        .possible()
        .forEach(p -> out.append(p.isNothing() ? " -" : " " + p.change().key()).append(p.open()));
    for (Stretch stretch : answer.stretches()) {
      out.append(" [" + stretch.series().key() + " " + stretch.firstText())
          .append(" to " + stretch.lastText() + " of " + Math.round(stretch.airframes() * 1e6))
          .append(" " + text(stretch.answer()) + "]");
    }
    return out + " " + answer.evidence() + answer.retrofits();
  }

  private static void isWhole(List<Answer> expected) {
    Set<String> features = new HashSet<>();
    for (Answer answer : expected) {
      assertThat(features.add(answer.feature().key())).isTrue();
      isWhole(answer);
    }
  }

  private static void isWhole(Answer answer) {
    List<String> changes =
        answer.possible().stream().map(p -> p.isNothing() ? "-" : p.change().key()).toList();
    assertThat(changes).doesNotHaveDuplicates();
    assertThat(answer.evidence().citations()).doesNotHaveDuplicates();
    switch (answer.state()) {
      case UNRECORDED, SPLITS -> assertThat(changes).isEmpty();
      case SETTLED -> assertThat(changes).hasSize(1).doesNotContain("-");
      case TRANSITION -> assertThat(answer.possible()).noneMatch(Possible::open);
      case OPEN -> assertThat(answer.possible()).anyMatch(Possible::open);
    }
    boolean several = answer.state() == State.TRANSITION || answer.state() == State.OPEN;
    assertThat(changes.size() > 1).isEqualTo(several);
    assertThat(answer.stretches().size() > 1).isEqualTo(answer.state() == State.SPLITS);
    for (int i = 0; i < answer.stretches().size(); i++) {
      isWhole(answer.stretches().get(i).answer());
      if (i > 0) {
        follows(answer.stretches().get(i - 1), answer.stretches().get(i));
      }
    }
  }

  private static void follows(Stretch one, Stretch other) {
    int bySeries = one.series().key().compareTo(other.series().key());
    assertThat(bySeries).isLessThanOrEqualTo(0);
    if (bySeries == 0) {
      assertThat(one.last()).isLessThan(other.first());
      assertThat(one.answer().agreesWith(other.answer())).isFalse();
    }
  }
}
