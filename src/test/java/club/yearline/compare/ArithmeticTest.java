package club.yearline.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.exchange.Asking;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class ArithmeticTest {

  private static final Path PUBLISHED = Path.of("src/test/resources/published");
  private static final Catalogue CATALOGUE = Asking.catalogue(PUBLISHED.resolve("package"));
  private static final Map<String, Derived> NAMES =
      Map.of(
          "useful-load", Derived.USEFUL_LOAD,
          "endurance", Derived.ENDURANCE,
          "payload-full-fuel", Derived.PAYLOAD_FULL_FUEL);

  static List<CSVRecord> published() {
    return Asking.rows(PUBLISHED.resolve("comparison.csv"));
  }

  /** The source of each row stands in the row; the figures are those of the published package. */
  @ParameterizedTest
  @MethodSource("published")
  void publishedDerivedFigureIsMet(CSVRecord row) {
    String minutes = row.get("reserve_minutes").isEmpty() ? "30" : row.get("reserve_minutes");
    Amount reserve = Amount.exactly(minutes, Scale.MINUTE).in(Scale.H);
    Interval found =
        new Arithmetic(build(row.get("variant")), reserve)
            .of(NAMES.get(row.get("derived")))
            .found()
            .orElseThrow();
    assertThat(found.isOne()).isTrue();
    assertThat(found.low().value())
        .isCloseTo(new BigDecimal(row.get("value")), within(new BigDecimal(row.get("tolerance"))));
  }

  /** Figures of a variant straight from its changes: one of them has no year to ask for. */
  private static Build build(String variant) {
    Figures figures = Figures.none();
    for (Figure figure : Figure.ALL) {
      List<Change> changes =
          CATALOGUE.changesOf(figure.key()).stream()
              .filter(c -> c.cutIn(variant).isPresent())
              .toList();
      if (!changes.isEmpty()) {
        figures.with(figure, changes.get(0).offering().get(0).value());
      }
    }
    return figures.build();
  }

  /** Worked by hand. */
  @Test
  void derivesWhatTheFormulasSay() {
    Arithmetic arithmetic =
        new Arithmetic(Figures.tourer().build(), Amount.exactly("0.5", Scale.H));
    assertThat(text(arithmetic, Derived.USEFUL_LOAD)).isEqualTo("900\u00a0lb");
    assertThat(text(arithmetic, Derived.PAYLOAD_FULL_FUEL)).isEqualTo("660\u00a0lb");
    assertThat(text(arithmetic, Derived.ENDURANCE)).isEqualTo("4.5\u00a0h");
    assertThat(text(arithmetic, Derived.RANGE)).isEqualTo("450\u00a0nmi");
    assertThat(text(arithmetic, Derived.WING_LOADING)).isEqualTo("13.2\u00a0lb/ft²");
    assertThat(text(arithmetic, Derived.POWER_LOADING)).isEqualTo("15.3\u00a0lb/hp");
  }

  @Test
  void showsTheWayLineByLine() {
    List<Step> steps =
        new Arithmetic(Figures.tourer().build(), Amount.exactly("0.5", Scale.H))
            .of(Derived.PAYLOAD_FULL_FUEL)
            .steps();
    assertThat(steps)
        .extracting(Step::name)
        .containsExactly("useful-load", "full-fuel-weight", "payload-full-fuel");
    assertThat(steps.get(1).terms()).extracting(Step.Term::sign).containsExactly("", "×");
    assertThat(steps.get(1).result().low().text()).isEqualTo("240\u00a0lb");
  }

  @Test
  void aRangeOfAFigureIsARangeOfWhatComesOfIt() {
    Build build =
        Figures.tourer()
            .with(Figure.USABLE_FUEL, "40", "50")
            .with(Figure.EMPTY_WEIGHT, "1400", "1420")
            .build();
    Interval payload =
        new Arithmetic(build, Amount.none(Scale.H))
            .of(Derived.PAYLOAD_FULL_FUEL)
            .found()
            .orElseThrow();
    assertThat(payload.low().number()).isEqualTo("580");
    assertThat(payload.high().number()).isEqualTo("660");
  }

  @ParameterizedTest
  @EnumSource(Derived.class)
  void anyMissingFigureGivesNoResultAndIsNamed(Derived derived) {
    for (Figure figure : derived.needs()) {
      Worked worked =
          new Arithmetic(Figures.tourer().without(figure).build(), Amount.none(Scale.H))
              .of(derived);
      assertThat(worked.found()).isEqualTo(Optional.empty());
      assertThat(worked.missing()).containsExactly(figure);
      assertThat(worked.steps()).isEmpty();
    }
  }

  @Test
  void aReserveBeyondTheTanksLeavesNoEnduranceAndNoRange() {
    Arithmetic arithmetic = new Arithmetic(Figures.tourer().build(), Amount.exactly("9", Scale.H));
    assertThat(arithmetic.of(Derived.ENDURANCE).found().orElseThrow().low().value())
        .isEqualByComparingTo("0");
    assertThat(arithmetic.of(Derived.RANGE).found().orElseThrow().high().value())
        .isEqualByComparingTo("0");
  }

  private static String text(Arithmetic arithmetic, Derived derived) {
    return arithmetic.of(derived).found().orElseThrow().low().text();
  }
}
