package club.yearline.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Serial;
import club.yearline.estimation.Bounds;
import club.yearline.estimation.CutInQuestion;
import club.yearline.estimation.Estimate;
import club.yearline.estimation.Observed;
import club.yearline.estimation.Shows;
import club.yearline.fleet.RegisterFilling.Given;
import club.yearline.fleet.Seen;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The demo's register agrees with the truths that it is made from, and lets them be found. */
class DemoRegisterTest {

  private static final Catalogue DEMO = Catalogue.of(Asking.records(Path.of("seed-data", "demo")));
  private static final List<Actor> PEOPLE =
      List.of(
          new Actor(1, "Ylva", Role.MEMBER),
          new Actor(2, "Tor", Role.MEMBER),
          new Actor(3, "Eskil", Role.MODERATOR));
  private static final List<Given> REGISTER = make(DemoRegister.SEED);

  private static List<Given> make(long seed) {
    return new DemoRegister(DEMO, PEOPLE, seed).make();
  }

  static List<TrueCutIn> truths() {
    return TrueCutIn.all(DEMO);
  }

  /** What was seen last of a truth's feature on an airframe of its variant and series. */
  private record Look(Serial serial, String value) {}

  private static List<Look> looks(TrueCutIn truth) {
    List<Look> looks = new ArrayList<>();
    for (Given given : REGISTER) {
      Position position = given.airframe().position();
      if (position.variant().key().equals(truth.variant())
          && position.series().key().equals(truth.series().key())) {
        last(given, truth.feature().key())
            .filter(v -> v.equals(truth.old()) || v.equals(truth.fresh()))
            .ifPresent(v -> looks.add(new Look(position.serial(), v)));
      }
    }
    return looks;
  }

  private static Optional<String> last(Given given, String feature) {
    return given.seen().stream()
        .filter(s -> s.feature().equals(feature))
        .max(Comparator.comparing(Seen::on))
        .map(Seen::value);
  }

  @Test
  void thereAreEnoughAirframesOwnedByEverybodySomeSharedAndSomeNot() {
    assertThat(REGISTER).hasSizeGreaterThanOrEqualTo(120);
    assertThat(REGISTER.stream().map(Given::owner).collect(Collectors.toSet()))
        .containsExactlyInAnyOrderElementsOf(PEOPLE);
    assertThat(REGISTER.stream().filter(Given::shared).count())
        .isBetween(REGISTER.size() / 3L, REGISTER.size() * 3L / 4);
    assertThat(REGISTER.stream().filter(Given::serialShown).count())
        .isBetween(REGISTER.size() / 3L, REGISTER.size() * 2L / 3);
    assertThat(
            REGISTER.stream()
                .map(g -> DEMO.variant(g.airframe().position().variant().key()).get().family())
                .collect(Collectors.toSet()))
        .hasSize(3);
  }

  @Test
  void noAirframeIsThereTwiceAndMarksBelongToNoState() {
    assertThat(REGISTER.stream().map(g -> g.airframe().position().serialText()))
        .doesNotHaveDuplicates();
    assertThat(REGISTER.stream().map(g -> g.airframe().registration()))
        .allMatch(m -> m == null || m.startsWith("Q"));
  }

  @Test
  void theSameSeedMakesTheSameRegister() {
    assertThat(make(DemoRegister.SEED)).isEqualTo(REGISTER);
    assertThat(make(DemoRegister.SEED + 1)).isNotEqualTo(REGISTER);
  }

  @Test
  void everythingSeenIsInTheCatalogue() {
    for (Given given : REGISTER) {
      for (Seen seen : given.seen()) {
        assertThat(DEMO.feature(seen.feature()).orElseThrow().value(seen.value()))
            .as("%s of %s", seen.value(), seen.feature())
            .isPresent();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("truths")
  void aTruthLiesWithinWhatIsRecorded(TrueCutIn truth) {
    Bounds recorded = recorded(question(truth));
    assertThat(recorded.size()).isGreaterThan(1);
    assertThat(truth.first().ordinal()).isBetween(recorded.first(), recorded.last());
    assertThat(truth.settled().ordinal()).isBetween(recorded.first(), recorded.last());
  }

  private static CutInQuestion question(TrueCutIn truth) {
    Change change = DEMO.change(truth.change()).orElseThrow();
    return CutInQuestion.of(DEMO, change, truth.variant(), truth.series());
  }

  private static Bounds recorded(CutInQuestion question) {
    return new Bounds(question.lowest().orElseThrow(), question.highest().orElseThrow());
  }

  @ParameterizedTest
  @MethodSource("truths")
  void whatWasSeenAgreesWithTheTruthButForExchangedParts(TrueCutIn truth) {
    List<Look> looks = looks(truth);
    List<Serial> against =
        looks.stream()
            .filter(l -> isOutside(truth, l.serial()))
            .filter(l -> !l.value().equals(truth.made(l.serial(), false)))
            .map(Look::serial)
            .toList();
    Set<Serial> stated = truth.exchanged();
    assertThat(against).containsAll(stated);
    long readily = Math.round(looks.size() * 2 * truth.feature().exchange().chance());
    assertThat(against).hasSizeLessThanOrEqualTo(stated.size() + (int) readily + 2);
    assertThat(looks.stream().filter(l -> l.serial().compareTo(truth.first()) < 0))
        .hasSizeGreaterThanOrEqualTo(3);
    assertThat(looks.stream().filter(l -> l.serial().compareTo(truth.settled()) >= 0))
        .hasSizeGreaterThanOrEqualTo(3);
  }

  private static boolean isOutside(TrueCutIn truth, Serial serial) {
    return serial.compareTo(truth.first()) < 0 || serial.compareTo(truth.settled()) >= 0;
  }

  @ParameterizedTest
  @MethodSource("truths")
  void theEstimateFindsTheTruthAndTheExchangedParts(TrueCutIn truth) {
    CutInQuestion question = question(truth);
    List<Observed> observed =
        looks(truth).stream().map(l -> observed(truth, l, question.shows(l.value()))).toList();
    Bounds recorded = recorded(question);
    Estimate estimate = Estimate.of(recorded, question.gather(observed).counted());
    if (truth.first().equals(truth.settled())) {
      assertThat(estimate.credible()).anyMatch(b -> b.holds(truth.first().ordinal()));
      long wide = estimate.credible().stream().mapToLong(Bounds::size).sum();
      assertThat(wide).isLessThan(recorded.size());
    }
    assertThat(estimate.suspects())
        .extracting(s -> s.sighting().serial())
        .containsAll(truth.exchanged());
  }

  private static Observed observed(TrueCutIn truth, Look look, Shows shows) {
    String series = truth.series().key();
    return new Observed(
        look.serial().toString(), series, look.serial(), shows, LocalDate.of(2025, 1, 1));
  }
}
