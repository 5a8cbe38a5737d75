package club.yearline.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Records;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.Serial;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.Variant;
import club.yearline.spotting.Claim;
import club.yearline.spotting.Seen;
import club.yearline.spotting.Spotting;
import club.yearline.spotting.Weighed;
import club.yearline.testing.Dice;
import club.yearline.testing.Seeds;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Findings and verdicts hold by their definition, on random catalogues. */
class InspectionLawsTest {

  private static final int SEEDS = 300;

  /** The slow evaluator looks at every serial of every variant for each value. */
  private static final int ASKED_EVERYWHERE = 20;

  private static final int POSITIONS = 4;

  @Test
  void everyFindingIsThatOfTheDefinition() {
    Map<Match, Integer> met = new EnumMap<>(Match.class);
    Seeds.check(
        SEEDS / 3,
        (records, dice) -> {
          Round round = new Round(records, dice);
          for (Position position : round.positions()) {
            for (Seen seen : round.observations()) {
              Finding finding = round.inspect(position, List.of(seen)).findings().get(0);
              String what = position + " " + seen;
              assertThat(finding.match()).as(what).isEqualTo(round.slow.match(position, seen));
              assertThat(keys(finding.missing()))
                  .as(what)
                  .isEqualTo(round.slow.missing(position, seen));
              met.merge(finding.match(), 1, Integer::sum);
            }
          }
        });
    assertThat(met.keySet()).isEqualTo(EnumSet.allOf(Match.class));
  }

  @Test
  void aValueThatIsNotExpectedIsToldWhereItBelongs() {
    int[] told = new int[2];
    Seeds.check(
        ASKED_EVERYWHERE,
        (records, dice) -> {
          Round round = new Round(records, dice);
          Position position = round.position();
          if (position == null) {
            return;
          }
          for (Seen seen : round.observations()) {
            Finding finding = round.inspect(position, List.of(seen)).findings().get(0);
            Set<String> asBuilt =
                round.slow.years(seen, EnumSet.of(Match.AS_BUILT, Match.AS_BUILT_OPTION));
            Set<String> possible = round.slow.years(seen, EnumSet.of(Match.EITHER));
            boolean expected = finding.match().isExpected();
            assertThat(years(finding.asBuiltAt())).isEqualTo(expected ? Set.of() : asBuilt);
            assertThat(years(finding.possibleAt())).isEqualTo(expected ? Set.of() : possible);
            assertThat(finding.asBuiltAt()).as("joined").satisfies(InspectionLawsTest::joined);
            told[0] += finding.asBuiltAt().size();
            told[1] += finding.possibleAt().size();
          }
        });
    assertThat(told[0]).isPositive();
    assertThat(told[1]).isPositive();
  }

  @Test
  void theVerdictFollowsFromTheFindingsAndTheShares() {
    Map<Verdict, Integer> met = new EnumMap<>(Verdict.class);
    Seeds.check(
        SEEDS,
        (records, dice) -> {
          Round round = new Round(records, dice);
          for (Position position : round.positions()) {
            List<Seen> seen = dice.some(round.observations(), 0, 6);
            Inspection made = round.inspect(position, seen);
            assertThat(made.findings().stream().map(Finding::seen)).isEqualTo(seen);
            assertThat(made.verdict()).isEqualTo(round.verdict(position, seen));
            met.merge(made.verdict(), 1, Integer::sum);
          }
        });
    assertThat(met.keySet()).isEqualTo(EnumSet.allOf(Verdict.class));
  }

  @Test
  void everyMandatoryRetrofitThatThePositionCallsForIsListedOnce() {
    Seeds.check(
        SEEDS,
        (records, dice) -> {
          Round round = new Round(records, dice);
          Position position = round.position();
          if (position == null) {
            return;
          }
          List<Seen> seen = dice.some(round.observations(), 0, 6);
          List<CalledFor> listed = round.inspect(position, seen).calledFor();
          assertThat(listed.stream().map(c -> c.retrofit().key()))
              .containsExactlyElementsOf(
                  records.retrofits().stream()
                      .filter(r -> r.fits(position) && round.catalogue.isMandatory(r))
                      .map(Retrofit::key)
                      .toList());
          for (CalledFor one : listed) {
            assertThat(one.shown()).isEqualTo(round.shown(one.retrofit(), seen));
          }
        });
  }

  private static void joined(List<? extends Belongs> years) {
    for (int i = 1; i < years.size(); i++) {
      Belongs before = years.get(i - 1);
      Belongs after = years.get(i);
      assertThat(
              before.variant().key().equals(after.variant().key())
                  && before.lastYear() + 1 >= after.firstYear())
          .isFalse();
    }
  }

  private static Set<String> keys(List<Retrofit> retrofits) {
    return retrofits.stream().map(Retrofit::key).collect(Collectors.toSet());
  }

  private static Set<String> years(List<Belongs> belongs) {
    Set<String> years = new HashSet<>();
    for (Belongs one : belongs) {
      IntStream.rangeClosed(one.firstYear(), one.lastYear())
          .forEach(year -> years.add(one.variant().key() + " " + year));
    }
    return years;
  }

  /** One random catalogue, with questions. */
  private static final class Round {

    private final Records records;
    private final Dice dice;
    private final Catalogue catalogue;
    private final SlowFindings slow;

    Round(Records records, Dice dice) {
      this.records = records;
      this.dice = dice;
      this.catalogue = Catalogue.of(records);
      this.slow = new SlowFindings(catalogue);
    }

    Inspection inspect(Position position, List<Seen> seen) {
      return Inspector.inspect(catalogue, position, seen);
    }

    List<Position> positions() {
      List<Position> all = new ArrayList<>();
      List<Variant> produced =
          records.variants().stream().filter(v -> years(v).length > 0).toList();
      for (int i = 0; i < POSITIONS && !produced.isEmpty(); i++) {
        Variant variant = dice.pick(produced);
        int[] years = years(variant);
        int year = years[dice.between(0, years.length - 1)];
        List<Series> series = catalogue.seriesOf(variant.family());
        if (series.isEmpty() || dice.chance(0.6)) {
          all.add(Position.of(variant, year));
        } else {
          Serial serial = Serial.of(dice.between(0, 60));
          all.add(Position.of(variant, dice.chance(0.7) ? year : null, dice.pick(series), serial));
        }
      }
      return all;
    }

    /** One position; null in a catalogue where nothing was produced. */
    @Nullable Position position() {
      return positions().stream().findFirst().orElse(null);
    }

    private int[] years(Variant variant) {
      return catalogue.model(variant.key()).orElseThrow().years();
    }

    /** One value of each feature. */
    List<Seen> observations() {
      return records.features().stream().map(this::observe).flatMap(Optional::stream).toList();
    }

    private Optional<Seen> observe(Feature feature) {
      List<String> values = new ArrayList<>();
      feature.values().stream().map(FeatureValue::key).forEach(values::add);
      if (feature.isNumber()) {
        values.add("777.5");
        records.changes().stream()
            .filter(c -> c.feature().equals(feature.key()))
            .flatMap(c -> c.offering().stream())
            .forEach(o -> values.add(o.value()));
      }
      return values.isEmpty()
          ? Optional.empty()
          : Optional.of(new Seen(feature, dice.pick(values)));
    }

    Verdict verdict(Position position, List<Seen> seen) {
      Set<Match> matches =
          seen.stream().map(s -> slow.match(position, s)).collect(Collectors.toSet());
      matches.remove(Match.NOT_RECORDED);
      if (matches.isEmpty()) {
        return Verdict.TOO_LITTLE;
      }
      if (!matches.contains(Match.DIFFERS)) {
        return Verdict.CONSISTENT;
      }
      Weighed weighed =
          Spotting.of(catalogue, position.variant().family())
              .orElseThrow()
              .weigh(Claim.of(position), seen);
      boolean doubtful =
          weighed.shares().stream()
              .filter(s -> !isClaimed(s.pair().variant(), s.pair().year(), position))
              .anyMatch(s -> s.share() > 20 * weighed.share());
      return doubtful ? Verdict.CHECK_IDENTITY : Verdict.EXCHANGED_PARTS;
    }

    private static boolean isClaimed(Variant variant, int year, Position position) {
      return variant.key().equals(position.variant().key())
          && (position.year() == null || position.year() == year);
    }

    CalledFor.Shown shown(Retrofit retrofit, List<Seen> seen) {
      for (Seen one : seen) {
        if (one.feature().key().equals(retrofit.feature())) {
          return SlowFindings.equal(one, retrofit.value())
              ? CalledFor.Shown.SHOWN
              : CalledFor.Shown.NOT_SHOWN;
        }
      }
      return CalledFor.Shown.NOT_LOOKED_AT;
    }
  }
}
