package club.yearline.effectivity;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.citation.Citation;
import club.yearline.citation.Source;
import club.yearline.citation.SourceKind;
import club.yearline.citation.Stance;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RetrofitTest {

  private static final Variant B = variant("b");
  private static final Series T = new Series("t", "f", "T-", 3, false, null, List.of());
  private static final Series U = new Series("u", "f", "U-", 3, false, null, List.of());

  @ParameterizedTest
  @CsvSource({
    // first year, last year, first serial, last serial, asked year, asked serial, fits
    "1963, 1968, , , 1963, , true",
    "1963, 1968, , , 1968, , true",
    "1963, 1968, , , 1962, , false",
    "1963, 1968, , , 1969, , false",
    ", 1968, , , 1950, , true",
    "1963, , , , 1999, , true",
    "1963, 1968, , , , T-1, true",
    ", , T-10, T-20, 1990, , true",
    ", , T-10, T-20, , T-10, true",
    ", , T-10, T-20, , T-20, true",
    ", , T-10, T-20, , T-9, false",
    ", , T-10, T-20, , T-20A, false",
    ", , T-10, , , T-99, true",
    ", , , T-20, , T-21, false",
    "1963, 1968, T-10, T-20, 1969, T-15, false",
    "1963, 1968, T-10, T-20, 1966, T-25, false",
    "1963, 1968, T-10, T-20, 1966, T-15, true",
    ", , , , 1966, T-15, true"
  })
  void fitsWhereYearsAndSerialsBothDoAndTheUnknownDoesNotExclude(
      @Nullable Integer first,
      @Nullable Integer last,
      @Nullable String firstSerial,
      @Nullable String lastSerial,
      @Nullable Integer year,
      @Nullable String serial,
      boolean fits) {
    Retrofit retrofit = retrofit(first, last, firstSerial, lastSerial, List.of());
    assertThat(retrofit.fits(position(B, year, T, serial))).isEqualTo(fits);
  }

  @Test
  void doesNotFitSerialsOfAnotherSeries() {
    Retrofit retrofit = retrofit(null, null, "T-10", "T-20", List.of());
    assertThat(retrofit.fits(position(B, 1966, U, "U-15"))).isFalse();
  }

  @Test
  void doesNotFitAnotherVariant() {
    assertThat(retrofit(null, null, null, null, List.of()).fits(Position.of(variant("c"), 1966)))
        .isFalse();
  }

  @Test
  void isMandatoryByADirectiveThatSpeaksForIt() {
    assertThat(mandatory(SourceKind.AIRWORTHINESS_DIRECTIVE, Stance.SUPPORTS)).isTrue();
    assertThat(mandatory(SourceKind.AIRWORTHINESS_DIRECTIVE, Stance.DISPUTES)).isFalse();
    assertThat(mandatory(SourceKind.SERVICE_BULLETIN, Stance.SUPPORTS)).isFalse();
  }

  private static boolean mandatory(SourceKind kind, Stance stance) {
    Retrofit retrofit =
        retrofit(null, null, null, null, List.of(new Citation("c", null, "s", null, stance, null)));
    Source source = new Source("s", kind, "S", null, null, null, null, null, null, null);
    Records records = Records.of(List.of(new SourceEntry(source)), List.of());
    return Catalogue.of(records).isMandatory(retrofit);
  }

  private static Position position(
      Variant variant, @Nullable Integer year, Series series, @Nullable String serial) {
    return serial == null
        ? new Position(variant, year, null, null)
        : Position.of(variant, year, series, series.read(serial).orElseThrow());
  }

  private static Variant variant(String key) {
    return new Variant(key, "f", key, null, null, List.of(), List.of(), List.of(), List.of());
  }

  private static Retrofit retrofit(
      @Nullable Integer firstYear,
      @Nullable Integer lastYear,
      @Nullable String firstSerial,
      @Nullable String lastSerial,
      List<Citation> citations) {
    String series = firstSerial == null && lastSerial == null ? null : "t";
    return new Retrofit(
        "r",
        "x",
        "v",
        "b",
        firstYear,
        lastYear,
        series,
        firstSerial,
        lastSerial,
        "Kit 1",
        null,
        citations);
  }
}
