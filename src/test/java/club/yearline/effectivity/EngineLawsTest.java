package club.yearline.effectivity;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.SlowAnswer.SlowPossible;
import club.yearline.effectivity.SlowAnswer.SlowStretch;
import club.yearline.effectivity.SlowStanding.Place;
import club.yearline.testing.Dice;
import club.yearline.testing.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The engine and the slow evaluator agree. */
class EngineLawsTest {

  private static final int SEEDS = 1000;

  @Test
  void agreesWithTheSlowEvaluatorOnEveryYear() {
    Seeds.check(SEEDS, (records, dice) -> new Comparison(records, dice).years());
  }

  @Test
  void agreesWithTheSlowEvaluatorOnEverySerial() {
    Seeds.check(SEEDS, (records, dice) -> new Comparison(records, dice).serials());
  }

  @Test
  void agreesWithTheSlowEvaluatorOnEveryBlockSize() {
    Seeds.check(SEEDS, (records, dice) -> new Comparison(records, dice).sizes());
  }

  @Test
  void readsTextsAsTheSlowEvaluatorDoes() {
    Seeds.check(SEEDS, (records, dice) -> new Comparison(records, dice).texts());
  }

  /** One catalogue under both evaluators. */
  private static final class Comparison {

    private final Records records;
    private final Dice dice;
    private final Catalogue catalogue;
    private final SlowEvaluator slow;

    Comparison(Records records, Dice dice) {
      this.records = records;
      this.dice = dice;
      this.catalogue = Catalogue.of(records);
      this.slow = new SlowEvaluator(records);
    }

    private VariantModel model(Variant variant) {
      return catalogue.model(variant.key()).orElseThrow();
    }

    void years() {
      for (Variant variant : records.variants()) {
        TreeSet<Integer> years = slow.years(variant.key());
        assertThat(model(variant).years()).containsExactly(years.toArray(Integer[]::new));
        assertThat(model(variant).timelines().stream().map(t -> t.feature().key()))
            .containsExactlyInAnyOrderElementsOf(slow.featuresOf(variant.key()));
        for (Timeline timeline : model(variant).timelines()) {
          years.forEach(year -> year(timeline, year));
          spans(timeline);
          compare(
              timeline.yearless(), slow.stretches(timeline.feature().key(), variant.key(), null));
        }
      }
    }

    /** Spans are the years of production, joined where answers agree and no year lies between. */
    private void spans(Timeline timeline) {
      List<String> expected = new ArrayList<>();
      Answer last = null;
      int lastYear = 0;
      for (int year : slow.years(timeline.variant().key())) {
        Answer answer = timeline.at(Position.of(timeline.variant(), year));
        boolean joins = last != null && lastYear == year - 1 && last.agreesWith(answer);
        String first = joins ? expected.remove(expected.size() - 1).split("-")[0] : "" + year;
        expected.add(first + "-" + year);
        last = answer;
        lastYear = year;
      }
      assertThat(timeline.spans().stream().map(s -> s.firstYear() + "-" + s.lastYear()).toList())
          .isEqualTo(expected);
    }

    void texts() {
      for (int i = 0; i < 20; i++) {
        String text = text();
        List<String> expected = new ArrayList<>();
        for (Series series : records.series()) {
          Serial serial = SlowSerials.read(series, text);
          if (serial != null) {
            expected.add(series.key() + " " + serial + " " + holding(series, serial));
          }
        }
        assertThat(catalogue.read(text).stream().map(Comparison::plain).toList())
            .as(text)
            .containsExactlyInAnyOrderElementsOf(expected);
      }
    }

    /** A serial as shown, or typed carelessly, or no serial at all. */
    private String text() {
      StringBuilder text = new StringBuilder();
      if (!records.series().isEmpty() && dice.chance(0.7)) {
        text.append(dice.pick(records.series()).show(Serial.of(dice.between(0, 60))));
      }
      for (int i = dice.between(0, 3); i > 0; i--) {
        int at = dice.between(0, text.length());
        text.insert(
            at, dice.pick("-", " ", ".", "0", "7", "-65", "-1965", "A", "b", "\u2013", "T"));
      }
      return text.toString();
    }

    private List<String> holding(Series series, Serial serial) {
      return slow.serials().blocksOf(series.key()).stream()
          .filter(b -> slow.serials().holds(b, serial))
          .map(SerialBlock::key)
          .sorted()
          .toList();
    }

    private static String plain(SerialMatch match) {
      List<String> blocks = match.blocks().stream().map(SerialBlock::key).sorted().toList();
      return match.series().key() + " " + match.serial() + " " + blocks;
    }

    private void year(Timeline timeline, int year) {
      Variant variant = timeline.variant();
      compare(
          timeline.at(Position.of(variant, year)),
          slow.inYear(timeline.feature().key(), variant.key(), year));
    }

    void serials() {
      for (Variant variant : records.variants()) {
        for (Series series : catalogue.seriesOf(variant.family())) {
          for (Serial serial : slow.serials().all(series.key())) {
            TreeSet<Integer> years = new TreeSet<>();
            slow.serials().blocksOfVariant(variant.key()).stream()
                .filter(b -> b.series().equals(series.key()) && b.year() != null)
                .filter(b -> slow.serials().holds(b, serial))
                .forEach(b -> years.add(b.year()));
            years.add(dice.between(1957, 1979));
            years.forEach(year -> serial(variant, year, series, serial));
            serial(variant, null, series, serial);
          }
        }
      }
    }

    private void serial(Variant variant, @Nullable Integer year, Series series, Serial serial) {
      for (Timeline timeline : model(variant).timelines()) {
        compare(
            timeline.at(Position.of(variant, year, series, serial)),
            slow.along(
                timeline.feature().key(), new Place(variant.key(), year, series.key(), serial)));
      }
    }

    void sizes() {
      for (Variant variant : records.variants()) {
        List<@Nullable Integer> years = new ArrayList<>(slow.years(variant.key()));
        years.add(null);
        for (Integer year : years) {
          assertThat(model(variant).airframes(year))
              .as("airframes of %s in %s", variant.key(), year)
              .isCloseTo(slow.airframes(variant.key(), year), Offset.offset(1e-9));
        }
      }
    }

    private static void compare(Answer answer, SlowAnswer expected) {
      SlowAnswer plain =
          new SlowAnswer(
              answer.state(),
              answer.possible().stream().map(Comparison::plain).toList(),
              expected.stretches(),
              answer.evidence().grade(),
              answer.evidence().disputed());
      if (!plain.equals(expected)) {
        assertThat(plain).isEqualTo(expected);
      }
      compare(answer.stretches(), expected.stretches());
    }

    private static void compare(List<Stretch> stretches, List<SlowStretch> expected) {
      if (stretches.isEmpty() && expected.isEmpty()) {
        return;
      }
      assertThat(stretches).hasSameSizeAs(expected);
      for (int i = 0; i < stretches.size(); i++) {
        Stretch stretch = stretches.get(i);
        SlowStretch other = expected.get(i);
        assertThat(stretch.series().key()).isEqualTo(other.series());
        assertThat(stretch.first()).isEqualTo(other.first());
        assertThat(stretch.last()).isEqualTo(other.last());
        assertThat(stretch.airframes()).isCloseTo(other.airframes(), Offset.offset(1e-9));
        compare(stretch.answer(), other.answer());
      }
    }

    private static SlowPossible plain(Possible possible) {
      String key = possible.change() == null ? "-" : possible.change().key();
      return new SlowPossible(Objects.requireNonNull(key), possible.open());
    }
  }
}
