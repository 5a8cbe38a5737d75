package club.yearline.spotting;

import static club.yearline.testing.Sample.block;
import static club.yearline.testing.Sample.change;
import static club.yearline.testing.Sample.choice;
import static club.yearline.testing.Sample.fromYear;
import static club.yearline.testing.Sample.number;
import static club.yearline.testing.Sample.records;
import static club.yearline.testing.Sample.turnstone;
import static club.yearline.testing.Sample.with;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Visibility;
import java.util.List;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * The ranking, worked by hand on one variant: LA-2B, a hundred built in each year from 1964 to
 * 1968, door latch sliding until 1965 and rotary from 1966, bolted on.
 */
class RankingTest {

  private static final Offset<Double> CLOSE = within(1e-9);

  private static final Catalogue TURNSTONE = Catalogue.of(records(turnstone()));

  @Test
  void isThePriorWhereNothingWasSeen() {
    Ranking ranking = considered(TURNSTONE).rank(List.of());
    assertThat(ranking.best(9))
        .extracting(r -> r.pair().year())
        .containsExactly(1964, 1965, 1966, 1967, 1968);
    assertThat(ranking.best(9)).allSatisfy(r -> assertThat(r.share()).isEqualTo(0.2, CLOSE));
  }

  @Test
  void multipliesPriorAndChances() {
    Ranking ranking = considered(TURNSTONE).rank(List.of(seen(TURNSTONE, "door-latch", "rotary")));
    assertThat(ranking.best(3)).extracting(r -> r.pair().year()).containsExactly(1966, 1967, 1968);
    assertThat(ranking.share("la-2b", 1964)).isEqualTo(0.025 / 2.975, CLOSE);
    assertThat(ranking.share("la-2b", 1966)).isEqualTo(0.975 / 2.975, CLOSE);
    assertThat(ranking.share("la-2b", 1999)).isZero();
  }

  @Test
  void tellsWhatSpeaksForAndAgainstAPair() {
    // Mean chance of rotary: (2 x 0.025 + 3 x 0.975) / 5 = 0.595; of sliding: 0.405.
    Ranking rotary = considered(TURNSTONE).rank(List.of(seen(TURNSTONE, "door-latch", "rotary")));
    assertThat(rotary.best(9)).allSatisfy(r -> assertThat(r.speakingFor()).isEmpty());
    assertThat(rotary.best(9))
        .filteredOn(r -> !r.speakingAgainst().isEmpty())
        .extracting(r -> r.pair().year())
        .containsExactly(1964, 1965);
    Ranking sliding = considered(TURNSTONE).rank(List.of(seen(TURNSTONE, "door-latch", "sliding")));
    assertThat(sliding.best(9))
        .filteredOn(r -> !r.speakingFor().isEmpty())
        .extracting(r -> r.pair().year())
        .containsExactly(1964, 1965);
    assertThat(sliding.best(9))
        .filteredOn(r -> !r.speakingAgainst().isEmpty())
        .extracting(r -> r.pair().year())
        .containsExactly(1966, 1967, 1968);
  }

  @Test
  void weighsTheMeanByThePrior() {
    // 1 of 1964 against 399 of the others: the mean chance of sliding is that of the many.
    List<Entry> entries =
        with(
            turnstone(),
            block("lt-1964", "lt", "LT-0100", "LT-0100", "la-2b", 1964),
            block("lt-1965", "lt", "LT-0101", "LT-0199", "la-2b", 1965),
            change("door-latch-rotary", "door-latch", "rotary", fromYear("la-2b", 1965)));
    Catalogue catalogue = Catalogue.of(records(entries));
    Ranking ranking = considered(catalogue).rank(List.of(seen(catalogue, "door-latch", "rotary")));
    // (1 x 0.025 + 399 x 0.975) / 400 = 0.972625
    assertThat(ranking.best(9).get(4).pair().year()).isEqualTo(1964);
    assertThat(ranking.share("la-2b", 1964)).isEqualTo(0.025 / (0.025 + 399 * 0.975), CLOSE);
    assertThat(ranking.best(9).get(4).speakingAgainst()).hasSize(1);
  }

  @Test
  void asksForTheFeatureThatTellsMost() {
    Catalogue catalogue = withQuestions();
    List<NextQuestion> next =
        considered(catalogue).rank(List.of()).next(Visibility.PAPERS, Set.of());
    // Rotary has chance 0.595; knowing the year leaves the entropy of 0.025 against 0.975.
    assertThat(next).extracting(q -> q.feature().key()).containsExactly("door-latch", "power");
    assertThat(next.get(0).bits()).isEqualTo(0.805139437941555, CLOSE);
    // 160 hp has chance (0.9995 + 4 x 0.0005) / 5 = 0.2003.
    assertThat(next.get(1).bits()).isEqualTo(0.7163236299855862, CLOSE);
  }

  @Test
  void asksOnlyWhatCanBeSeenFromThereAndWasNotAsked() {
    Catalogue catalogue = withQuestions();
    Considered considered = considered(catalogue);
    assertThat(considered.rank(List.of()).next(Visibility.OPENED, Set.of()))
        .extracting(q -> q.feature().key())
        .containsExactly("door-latch");
    assertThat(considered.rank(List.of()).next(Visibility.PAPERS, Set.of("door-latch")))
        .extracting(q -> q.feature().key())
        .containsExactly("power");
    assertThat(
            considered
                .rank(List.of(seen(catalogue, "door-latch", "rotary")))
                .next(Visibility.RAMP, Set.of()))
        .isEmpty();
  }

  /** A figure of one year, and a choice that is the same on all. */
  private static Catalogue withQuestions() {
    return Catalogue.of(
        records(
            with(
                turnstone(),
                number("power", "hp"),
                choice("tail", "round", "square"),
                change("tail-1", "tail", "round", CutIn.atStart("la-2b")),
                change("power-1", "power", "145", CutIn.atStart("la-2b")),
                change("power-2", "power", "160", fromYear("la-2b", 1968)))));
  }

  @Test
  void leavesOutAFigureOfWhichNothingIsRecordedAndSaysSo() {
    Catalogue catalogue = Catalogue.of(records(with(turnstone(), number("power", "hp"))));
    Ranking ranking = considered(catalogue).rank(List.of(seen(catalogue, "power", "145")));
    assertThat(ranking.leftOut()).extracting(Seen::code).containsExactly("power:145");
    assertThat(ranking.seen()).isEmpty();
    assertThat(ranking.share("la-2b", 1964)).isEqualTo(0.2, CLOSE);
  }

  @Test
  void refusesTwoObservationsOfOneFeature() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                considered(TURNSTONE)
                    .rank(
                        List.of(
                            seen(TURNSTONE, "door-latch", "rotary"),
                            seen(TURNSTONE, "door-latch", "sliding"))));
  }

  @Test
  void ranksNothingInAnEmptyCatalogue() {
    Ranking ranking = Spotting.ofAll(Catalogue.EMPTY).rank(List.of());
    assertThat(ranking.size()).isZero();
    assertThat(ranking.best(9)).isEmpty();
    assertThat(ranking.next(Visibility.PAPERS, Set.of())).isEmpty();
  }

  /**
   * A textbook's case (from memory): one in a hundred has a thing, a test shows it on 80 % of those
   * and on 9.6 % of the others; of those on which it is shown, 7.8 % have it.
   */
  @Test
  void agreesWithTheTextbooksRareThing() {
    double[] shares =
        Shares.of(new double[] {Math.log(0.01) + Math.log(0.8), Math.log(0.99) + Math.log(0.096)});
    assertThat(shares[0]).isEqualTo(0.0776, within(0.0001));
  }

  @Test
  void keepsSharesOfChancesTooSmallForPlainNumbers() {
    double[] shares = Shares.of(new double[] {-5000, -5000 + Math.log(3)});
    assertThat(shares).containsExactly(new double[] {0.25, 0.75}, CLOSE);
  }

  private static Considered considered(Catalogue catalogue) {
    return Spotting.of(catalogue, "turnstone").orElseThrow();
  }

  private static Seen seen(Catalogue catalogue, String feature, String value) {
    return new Seen(catalogue.feature(feature).orElseThrow(), value);
  }
}
