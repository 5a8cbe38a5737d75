package club.yearline.effectivity;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.SlowStanding.Place;
import club.yearline.testing.Catalogues;
import club.yearline.testing.Dice;
import club.yearline.testing.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The impact of a change, by its laws and against the slow evaluator. */
class ImpactLawsTest {

  private static final int SEEDS = 150;

  @Test
  void aStateHasNoImpactAgainstItself() {
    Seeds.check(
        SEEDS,
        (records, dice) -> {
          List<Entry> shuffled = dice.some(records.entries(), records.size(), records.size());
          Catalogue same = Catalogue.of(Records.of(shuffled, records.pictures()));
          assertThat(Impact.between(Catalogue.of(records), same)).isEmpty();
        });
  }

  @Test
  void theImpactTheOtherWayRoundIsMirrored() {
    Seeds.check(
        SEEDS,
        (records, dice) -> {
          Catalogue one = Catalogue.of(records);
          Catalogue other = Catalogue.of(Edits.of(records, dice));
          assertThat(texts(Impact.between(other, one)))
              .isEqualTo(
                  texts(Impact.between(one, other).stream().map(ImpactRow::mirrored).toList()));
        });
  }

  @Test
  void anEditIsCompiledOnTopOfTheStateBeforeAsOnItsOwn() {
    Seeds.check(
        SEEDS,
        (records, dice) -> {
          Catalogue one = Catalogue.of(records);
          Records edited = Edits.of(records, dice);
          assertThat(texts(Impact.between(one, one.next(edited))))
              .isEqualTo(texts(Impact.between(one, Catalogue.of(edited))));
        });
  }

  @Test
  void editsMakeRowsOfEveryKind() {
    TreeSet<ImpactRow.Kind> met = new TreeSet<>();
    for (long seed = 0; seed < 50; seed++) {
      Records records = Catalogues.random(seed);
      Records edited = Edits.of(records, new Dice(seed));
      Impact.between(Catalogue.of(records), Catalogue.of(edited)).forEach(r -> met.add(r.kind()));
    }
    assertThat(met).containsExactly(ImpactRow.Kind.values());
  }

  @Test
  void everyChangedAnswerIsInExactlyOneRow() {
    Seeds.check(
        SEEDS,
        (records, dice) -> {
          Records edited = Edits.of(records, dice);
          List<ImpactRow> rows = Impact.between(Catalogue.of(records), Catalogue.of(edited));
          SlowImpact.State before = new SlowImpact.State(records);
          SlowImpact.State after = new SlowImpact.State(edited);
          for (Variant variant : records.variants()) {
            for (Feature feature : records.features()) {
              List<ImpactRow> ours =
                  rows.stream()
                      .filter(r -> r.variant().key().equals(variant.key()))
                      .filter(r -> r.feature().key().equals(feature.key()))
                      .toList();
              compare(ours, new SlowImpact(before, after, variant.key(), feature.key()));
            }
          }
        });
  }

  private static void compare(List<ImpactRow> rows, SlowImpact slow) {
    if (slow.interleaves()) {
      compareTotals(rows, slow.rows());
    } else {
      assertThat(texts(rows)).isEqualTo(slow.rows().stream().map(ImpactLawsTest::text).toList());
    }
  }

  /** Where serials have several years, rows are cut otherwise but count the same airframes. */
  private static void compareTotals(List<ImpactRow> rows, List<SlowImpact.Row> expected) {
    assertThat(rows.isEmpty()).isEqualTo(expected.isEmpty());
    for (ImpactRow.Kind kind : ImpactRow.Kind.values()) {
      assertThat(
              Math.round(
                  rows.stream()
                      .filter(r -> r.kind() == kind)
                      .mapToDouble(r -> 1e6 * (r.airframesBefore() + 1e3 * r.airframesAfter()))
                      .sum()))
          .isEqualTo(
              Math.round(
                  expected.stream()
                      .filter(r -> r.kind() == kind)
                      .mapToDouble(r -> 1e6 * (r.airframesBefore() + 1e3 * r.airframesAfter()))
                      .sum()));
    }
  }

  private static List<String> texts(List<ImpactRow> rows) {
    return rows.stream().map(ImpactLawsTest::text).toList();
  }

  private static String text(ImpactRow row) {
    return row.kind()
        + " "
        + years(row.firstYear(), row.lastYear())
        + serials(
            row.series() == null ? null : row.series().key(), row.firstSerial(), row.lastSerial())
        + airframes(row.airframesBefore(), row.airframesAfter())
        + plain(row.before())
        + " to "
        + plain(row.after());
  }

  private static String text(SlowImpact.Row row) {
    List<Integer> years = new ArrayList<>();
    row.places().stream().map(Place::year).filter(Objects::nonNull).forEach(years::add);
    Place first = row.places().get(0);
    Place last = row.places().get(row.places().size() - 1);
    return row.kind()
        + " "
        + years(
            years.stream().min(Integer::compare).orElse(null),
            years.stream().max(Integer::compare).orElse(null))
        + serials(first.series(), first.serial(), last.serial())
        + airframes(row.airframesBefore(), row.airframesAfter())
        + plain(row.before())
        + " to "
        + plain(row.after());
  }

  private static String years(@Nullable Integer first, @Nullable Integer last) {
    return first + "-" + last + " ";
  }

  /** The last serial by its ordinal: letters after it are rarely named. */
  private static String serials(
      @Nullable String series, @Nullable Serial first, @Nullable Serial last) {
    return series + " " + first + "-" + (last == null ? "" : last.ordinal()) + " ";
  }

  private static String airframes(double before, double after) {
    return Math.round(before * 1e6) + "/" + Math.round(after * 1e6) + " ";
  }

  private static String plain(@Nullable Answer answer) {
    return answer == null
        ? "none"
        : answer.state()
            + " "
            + answer.possible().stream().map(p -> p.isNothing() ? "-" : p.changeKey()).toList()
            + answer.evidence().grade()
            + answer.evidence().disputed();
  }

  private static String plain(@Nullable SlowAnswer answer) {
    return answer == null
        ? "none"
        : answer.state() + " " + answer.changes() + answer.grade() + answer.disputed();
  }
}
