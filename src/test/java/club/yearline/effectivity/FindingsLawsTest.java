package club.yearline.effectivity;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.SlowStanding.Place;
import club.yearline.testing.Seeds;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Findings and the slow evaluator agree. */
class FindingsLawsTest {

  private static final int SEEDS = 200;

  @Test
  void everyErrorOfDamagedRecordsIsFoundAndNoOther() {
    Set<Finding.Code> met = EnumSet.noneOf(Finding.Code.class);
    Seeds.check(
        4 * SEEDS,
        (records, dice) -> {
          Records broken = Damage.of(records, dice);
          List<Finding> errors = Findings.in(broken).stream().filter(Finding::isError).toList();
          errors.forEach(e -> met.add(e.code()));
          Set<String> found =
              texts(errors, f -> f.code().code() + " " + f.table() + " " + f.record());
          assertThat(found).isEqualTo(SlowFindings.errors(broken));
        });
    assertThat(Long.getLong("yearline.seed") != null || met.size() == 9).isTrue();
  }

  @Test
  void everyGapBetweenBlocksIsNoted() {
    Seeds.check(
        SEEDS,
        (records, dice) -> {
          Set<String> gaps = new TreeSet<>();
          of(records, Finding.Code.GAP_IN_BLOCKS).forEach(f -> addGap(records, f, gaps));
          assertThat(gaps).isEqualTo(gaps(records));
        });
  }

  private static void addGap(Records records, Finding finding, Set<String> gaps) {
    SlowSerials serials = new SlowSerials(records);
    SerialBlock above =
        records.blocks().stream()
            .filter(b -> b.key().equals(finding.record()))
            .findFirst()
            .orElseThrow();
    long first = serials.recorded(above.series(), finding.arguments().get(1)).ordinal();
    long last = serials.recorded(above.series(), finding.arguments().get(2)).ordinal();
    for (long ordinal = first; ordinal <= last; ordinal++) {
      gaps.add(above.series() + " " + ordinal);
    }
  }

  /** Ordinals between two blocks that count in no block. */
  private static Set<String> gaps(Records records) {
    SlowSerials serials = new SlowSerials(records);
    Set<String> gaps = new TreeSet<>();
    for (Series series : records.series()) {
      Set<Long> counted = new TreeSet<>();
      for (SerialBlock block : serials.blocksOf(series.key())) {
        serials.counted(block).forEach(s -> counted.add(s.ordinal()));
      }
      for (Serial serial : serials.all(series.key())) {
        boolean between =
            counted.stream().anyMatch(o -> o < serial.ordinal())
                && counted.stream().anyMatch(o -> o > serial.ordinal());
        if (between && !counted.contains(serial.ordinal())) {
          gaps.add(series.key() + " " + serial.ordinal());
        }
      }
    }
    return gaps;
  }

  @Test
  void everyMissingBaselineIsFound() {
    Seeds.check(
        SEEDS,
        (records, dice) -> {
          Set<String> expected = new TreeSet<>();
          SlowEvaluator slow = new SlowEvaluator(records);
          forEachFeature(
              records,
              (feature, variant) -> {
                for (Place place : places(records, slow, variant)) {
                  SlowAnswer answer = slow.along(feature, place);
                  if (answer.state() == State.UNRECORDED || answer.changes().contains("-")) {
                    expected.add(feature + " " + variant);
                  }
                }
              });
          List<Finding> found = of(records, Finding.Code.NO_BASELINE);
          assertThat(texts(found, f -> f.record() + " " + f.arguments().get(0)))
              .isEqualTo(expected);
        });
  }

  @Test
  void everyOverlapOfWindowsIsFound() {
    Seeds.check(
        SEEDS,
        (records, dice) -> {
          Set<String> expected = new TreeSet<>();
          SlowEvaluator slow = new SlowEvaluator(records);
          forEachFeature(
              records,
              (feature, variant) ->
                  places(records, slow, variant)
                      .forEach(place -> addOverlaps(slow, feature, place, expected)));
          List<Finding> found = of(records, Finding.Code.WINDOWS_OVERLAP);
          assertThat(texts(found, f -> f.arguments().get(0) + " " + f.record()))
              .isEqualTo(expected);
        });
  }

  private static void addOverlaps(
      SlowEvaluator slow, String feature, Place place, Set<String> overlaps) {
    List<String> inside = slow.inside(feature, place);
    for (int i = 1; i < inside.size(); i++) {
      overlaps.add(inside.get(i - 1) + " " + inside.get(i) + "/" + place.variant());
    }
  }

  private static List<Finding> of(Records records, Finding.Code code) {
    return Findings.in(records).stream().filter(f -> f.code() == code).toList();
  }

  private static Set<String> texts(List<Finding> findings, Function<Finding, String> text) {
    return new TreeSet<>(findings.stream().map(text).toList());
  }

  private interface FeatureCheck {
    void check(String feature, String variant);
  }

  private static void forEachFeature(Records records, FeatureCheck check) {
    SlowEvaluator slow = new SlowEvaluator(records);
    for (Variant variant : records.variants()) {
      slow.featuresOf(variant.key()).forEach(f -> check.check(f, variant.key()));
    }
  }

  /** The years without blocks and the serials of the blocks. */
  private static List<Place> places(Records records, SlowEvaluator slow, String variant) {
    List<SerialBlock> blocks = slow.serials().blocksOfVariant(variant);
    List<Place> places = new ArrayList<>();
    for (int year : slow.years(variant)) {
      if (blocks.stream().noneMatch(b -> Objects.equals(b.year(), year))) {
        places.add(new Place(variant, year, null, null));
      }
    }
    for (SerialBlock block : blocks) {
      for (Serial serial : slow.serials().all(block.series())) {
        if (slow.serials().holds(block, serial)) {
          places.add(new Place(variant, block.year(), block.series(), serial));
        }
      }
    }
    return places;
  }
}
