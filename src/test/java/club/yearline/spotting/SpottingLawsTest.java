package club.yearline.spotting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Records;
import club.yearline.effectivity.Serial;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.Variant;
import club.yearline.effectivity.VariantModel;
import club.yearline.effectivity.Visibility;
import club.yearline.testing.Dice;
import club.yearline.testing.Sample;
import club.yearline.testing.Seeds;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Laws of spotting, on random catalogues. */
class SpottingLawsTest {

  private static final int SEEDS = 500;
  private static final Offset<Double> CLOSE = within(1e-9);

  @Test
  void sharesSumToOne() {
    Seeds.check(
        SEEDS,
        (records, dice) -> {
          Case at = new Case(records, dice);
          if (at.considered.pairs().isEmpty()) {
            return;
          }
          Ranking ranking = at.considered.rank(at.seen);
          assertThat(sum(ranking)).isEqualTo(1, CLOSE);
          assertThat(ranking.best(Integer.MAX_VALUE))
              .hasSize(at.considered.pairs().size())
              .isSortedAccordingTo((a, b) -> Double.compare(b.share(), a.share()));
        });
  }

  private static double sum(Ranking ranking) {
    return ranking.best(Integer.MAX_VALUE).stream().mapToDouble(Ranked::share).sum();
  }

  @Test
  void agreesWithPlainProbabilities() {
    Seeds.check(
        SEEDS,
        (records, dice) -> {
          Case at = new Case(records, dice);
          Ranking ranking = at.considered.rank(at.seen);
          at.slow
              .shares(at.seen)
              .forEach(
                  (pair, share) ->
                      assertThat(share(ranking, pair)).as(pair).isEqualTo(share, CLOSE));
          assertThat(ranking.leftOut())
              .containsExactlyInAnyOrderElementsOf(
                  at.seen.stream().filter(s -> at.slow.values(s.feature()).isEmpty()).toList());
        });
  }

  @Test
  void drawsWhatSpeaksForAndAgainstFromPlainProbabilities() {
    Seeds.check(
        SEEDS,
        (records, dice) -> {
          Case at = new Case(records, dice);
          Map<String, Double> prior = at.slow.prior();
          for (Ranked ranked : at.considered.rank(at.seen).best(Integer.MAX_VALUE)) {
            String pair = ranked.pair().variant().key() + " " + ranked.pair().year();
            for (Seen one : at.seen) {
              if (!at.slow.values(one.feature()).isEmpty()) {
                double mean = 0;
                for (var entry : prior.entrySet()) {
                  mean += entry.getValue() * at.slow.chance(entry.getKey(), one);
                }
                double chance = at.slow.chance(pair, one);
                assertThat(ranked.speakingFor().contains(one))
                    .isEqualTo(chance >= 2 * mean * (1 - 1e-9));
                assertThat(ranked.speakingAgainst().contains(one))
                    .isEqualTo(chance <= mean / 2 * (1 + 1e-9));
              }
            }
          }
        });
  }

  @Test
  void expectsTheDropInEntropyThatPlainProbabilitiesDo() {
    Seeds.check(
        SEEDS,
        (records, dice) -> {
          Case at = new Case(records, dice);
          Visibility standing = dice.pick(Visibility.values());
          List<NextQuestion> next = at.considered.rank(at.seen).next(standing, Set.of());
          Map<String, Double> shares = at.slow.shares(at.seen);
          for (Feature feature : at.considered.features()) {
            boolean askable =
                feature.visibility().compareTo(standing) <= 0
                    && at.seen.stream().noneMatch(s -> s.feature().equals(feature))
                    && !at.slow.values(feature).isEmpty();
            double bits = askable ? at.slow.bits(feature, shares) : 0;
            assertThat(bits(next, feature)).as(feature.key()).isEqualTo(bits, within(1e-8));
          }
          assertThat(next)
              .allSatisfy(q -> assertThat(q.bits()).isPositive())
              .isSortedAccordingTo((a, b) -> Double.compare(b.bits(), a.bits()));
        });
  }

  private static double bits(List<NextQuestion> next, Feature feature) {
    return next.stream()
        .filter(q -> q.feature().equals(feature))
        .mapToDouble(NextQuestion::bits)
        .findFirst()
        .orElse(0);
  }

  @Test
  void joinsOnlyNeighbouringYearsAndLosesNone() {
    Seeds.check(
        SEEDS,
        (records, dice) -> {
          Case at = new Case(records, dice);
          Ranking ranking = at.considered.rank(at.seen);
          Spans spans = ranking.spans();
          List<RankedSpan> all = spans.best(spans.size());
          List<Share> years = all.stream().flatMap(s -> s.years().stream()).toList();
          assertThat(years.stream().map(y -> y.pair().variant().key() + " " + y.pair().year()))
              .containsExactlyInAnyOrderElementsOf(at.slow.prior().keySet());
          for (RankedSpan span : all) {
            assertThat(span.years()).hasSize(span.lastYear() - span.firstYear() + 1);
            for (Share year : span.years()) {
              String pair = year.pair().variant().key() + " " + year.pair().year();
              assertThat(year.share()).isEqualTo(share(ranking, pair));
              assertThat(span.exchanged())
                  .containsExactlyElementsOf(
                      ranking.seen().stream().filter(s -> !at.slow.mayBeBuilt(pair, s)).toList());
            }
          }
          assertThat(spans.nothingFits())
              .isEqualTo(!all.isEmpty() && all.stream().noneMatch(s -> s.exchanged().isEmpty()));
        });
  }

  @Test
  void takesNoAccountOfTheOrderOfObservations() {
    Seeds.check(
        SEEDS,
        (records, dice) -> {
          Case at = new Case(records, dice);
          List<Seen> other = new ArrayList<>(at.seen);
          Collections.reverse(other);
          assertThat(at.considered.rank(other).best(Integer.MAX_VALUE))
              .isEqualTo(at.considered.rank(at.seen).best(Integer.MAX_VALUE));
        });
  }

  @Test
  void isThePriorWhereNothingWasSeen() {
    Seeds.check(
        SEEDS,
        (records, dice) -> {
          Case at = new Case(records, dice);
          Ranking ranking = at.considered.rank(List.of());
          at.slow
              .prior()
              .forEach((pair, share) -> assertThat(share(ranking, pair)).isEqualTo(share, CLOSE));
        });
  }

  @Test
  void isNotChangedByAnObservationThatIsUniformEverywhere() {
    Feature nowhere = Sample.choice("nowhere", "this", "that", "neither");
    Seeds.check(
        SEEDS,
        (records, dice) -> {
          Case at = new Case(records, dice);
          List<Seen> more = new ArrayList<>(at.seen);
          more.add(new Seen(nowhere, "that"));
          Ranking with = at.considered.rank(more);
          for (Ranked without : at.considered.rank(at.seen).best(Integer.MAX_VALUE)) {
            assertThat(with.share(without.pair().variant().key(), without.pair().year()))
                .isEqualTo(without.share(), CLOSE);
          }
        });
  }

  @Test
  void takesChancesAtSerialsAsPlainProbabilitiesDo() {
    Seeds.check(
        SEEDS,
        (records, dice) -> {
          Case at = new Case(records, dice);
          for (Position position : at.serials()) {
            double log = 0;
            for (Seen one : at.seen) {
              boolean counts = !at.slow.values(one.feature()).isEmpty();
              double chance = counts ? at.slow.chance(position, one) : 1;
              assertThat(at.considered.chance(position, one)).isEqualTo(chance, CLOSE);
              log += Math.log(chance);
            }
            assertThat(at.considered.logLikelihood(position, at.seen)).isEqualTo(log, CLOSE);
          }
        });
  }

  @Test
  void weighsClaimsWithSharesThatSumToOne() {
    Seeds.check(
        SEEDS,
        (records, dice) -> {
          Case at = new Case(records, dice);
          for (Position position : at.serials()) {
            Weighed weighed = at.considered.weigh(Claim.of(position), at.seen);
            double sum = weighed.shares().stream().mapToDouble(Share::share).sum();
            assertThat(sum).isEqualTo(weighed.shares().isEmpty() ? 0 : 1, CLOSE);
            // Against the claim's own pair, what changes is its likelihood alone.
            at.compare(position, weighed);
          }
        });
  }

  private static double share(Ranking ranking, String pair) {
    String[] words = pair.split(" ");
    return ranking.share(words[0], Integer.parseInt(words[1]));
  }

  /** A family or all of a random catalogue, and things seen. */
  private static final class Case {

    private final Catalogue catalogue;
    private final Considered considered;
    private final SlowSpotting slow;
    private final List<Variant> variants = new ArrayList<>();
    private final List<Seen> seen = new ArrayList<>();
    private final Dice dice;

    Case(Records records, Dice dice) {
      this.dice = dice;
      this.catalogue = Catalogue.of(records);
      List<String> families = records.families().stream().map(f -> f.key()).toList();
      boolean all = families.isEmpty() || dice.chance(0.3);
      String family = all ? "" : dice.pick(families);
      this.considered =
          all ? Spotting.ofAll(catalogue) : Spotting.of(catalogue, family).orElseThrow();
      records.variants().stream()
          .filter(v -> all || v.family().equals(family))
          .forEach(variants::add);
      this.slow = new SlowSpotting(records, catalogue, variants);
      dice.some(records.features(), 0, 5).forEach(f -> seen.add(seen(f)));
    }

    private Seen seen(Feature feature) {
      return new Seen(
          feature,
          feature.isNumber()
              ? dice.pick("120.00", "145", "0.5", "0", "-3", "99")
              : dice.pick(feature.values()).key());
    }

    List<Position> serials() {
      List<Position> positions = new ArrayList<>();
      for (Variant variant : variants) {
        VariantModel model = catalogue.model(variant.key()).orElseThrow();
        for (Series series : catalogue.seriesOf(variant.family())) {
          Serial serial = Serial.of(dice.between(0, 59));
          int[] years = model.years();
          Integer year =
              years.length > 0 && dice.chance(0.7)
                  ? years[dice.between(0, years.length - 1)]
                  : null;
          positions.add(Position.of(variant, year, series, serial));
        }
      }
      return positions;
    }

    /**
     * The claim's odds against any other pair: prior times chances, at the serial for the claim.
     */
    void compare(Position claimed, Weighed weighed) {
      Map<String, Double> prior = slow.prior();
      double own = 0;
      double all = 0;
      for (var entry : prior.entrySet()) {
        String[] words = entry.getKey().split(" ");
        boolean held =
            words[0].equals(claimed.variant().key())
                && (claimed.year() == null || claimed.year() == Integer.parseInt(words[1]));
        double weight = entry.getValue();
        for (Seen one : seen) {
          if (!slow.values(one.feature()).isEmpty()) {
            weight *= held ? slow.chance(claimed, one) : slow.chance(entry.getKey(), one);
          }
        }
        own += held ? weight : 0;
        all += weight;
      }
      if (all > 0) {
        assertThat(weighed.share()).isEqualTo(own / all, CLOSE);
      }
    }
  }
}
