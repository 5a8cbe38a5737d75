package club.yearline.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Exchange;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Possible;
import club.yearline.spotting.Considered;
import club.yearline.spotting.Ranked;
import club.yearline.spotting.RankedSpan;
import club.yearline.spotting.Ranking;
import club.yearline.spotting.Seen;
import club.yearline.spotting.Spotting;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An airframe of the demo is recognised by what can be seen on it, in its family and in all. */
class DemoSpottingTest {

  private static final Catalogue DEMO = Asking.catalogue(Path.of("seed-data/demo"));

  @ParameterizedTest
  @CsvSource({
    "LT-0005, la-2, 1956",
    "LT-0090, la-2, 1959",
    "LT-0170, la-2a, 1961",
    "LT-0320, la-2b, 1964",
    "LT-0450, la-2b, 1966",
    "LT-0650, la-2b, 1968",
    "LT-0840, la-2b, 1970",
    "LT-1050, la-2c, 1972",
    "LT-1220, la-2c, 1974",
    "LT-1400, la-2d, 1976",
    "W-640030, la-5, 1964",
    "W-670030, la-5a, 1967"
  })
  void anAirframeAsItWasBuiltRanksFirst(String serial, String variant, int year) {
    List<Seen> seen = asBuilt(serial);
    String family = DEMO.variant(variant).orElseThrow().family();
    for (Considered considered :
        List.of(Spotting.of(DEMO, family).orElseThrow(), Spotting.ofAll(DEMO))) {
      RankedSpan best = considered.rank(seen).spans().best(1).get(0);
      assertThat(best.variant().key()).isEqualTo(variant);
      assertThat(year).isBetween(best.firstYear(), best.lastYear());
      assertThat(best.exchanged()).isEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource({"LT-0170, la-2a, 1961", "LT-0450, la-2b, 1966", "LT-1000, la-2c, 1972"})
  void anAirframeWithAnExchangedPartStillRanksHigh(String serial, String variant, int year) {
    Considered considered = Spotting.of(DEMO, "turnstone").orElseThrow();
    List<Seen> seen = asBuilt(serial);
    int tried = 0;
    for (int i = 0; i < seen.size(); i++) {
      Optional<Seen> other = exchanged(seen.get(i));
      if (other.isPresent()) {
        List<Seen> one = new ArrayList<>(seen);
        one.set(i, other.get());
        assertThat(rank(considered.rank(one), variant, year)).as(other.get().code()).isLessThan(3);
        tried++;
      }
    }
    assertThat(tried).isGreaterThan(10);
  }

  private static int rank(Ranking ranking, String variant, int year) {
    List<Ranked> all = ranking.best(ranking.size());
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).pair().is(variant, year)) {
        return i;
      }
    }
    throw new AssertionError("No pair " + variant + " " + year);
  }

  /** Another value of a part that is exchanged now and then. */
  private static Optional<Seen> exchanged(Seen seen) {
    Feature feature = seen.feature();
    boolean may = !feature.isNumber() && feature.exchange().chance() >= Exchange.BOLT_ON.chance();
    return feature.values().stream()
        .filter(v -> may && !v.key().equals(seen.value()))
        .map(v -> new Seen(feature, v.key()))
        .findFirst();
  }

  /** What the airframe left the factory with: of several possible things the newest, standard. */
  private static List<Seen> asBuilt(String serial) {
    Located located = Asking.ask(DEMO, "", "", serial);
    List<Seen> seen = new ArrayList<>();
    for (Answer answer : DEMO.expected(((Located.Found) located).position())) {
      answer.possible().stream()
          .filter(p -> !p.isNothing())
          .reduce((older, newer) -> newer)
          .map(Possible::offering)
          .ifPresent(offering -> seen.add(new Seen(answer.feature(), standard(offering))));
    }
    assertThat(seen).hasSizeGreaterThan(20);
    return seen;
  }

  private static String standard(List<Offered> offering) {
    return offering.stream()
        .filter(o -> o.fit() == Fit.STANDARD)
        .findFirst()
        .orElse(offering.get(0))
        .value();
  }
}
