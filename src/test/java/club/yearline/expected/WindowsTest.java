package club.yearline.expected;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.catalog.Wording;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Series;
import club.yearline.testing.Sample;
import club.yearline.web.Phrases;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.context.support.ResourceBundleMessageSource;

class WindowsTest {

  private static final Series LT = Sample.series("lt", "f", "LT-");
  private static final Series LTX = Sample.series("ltx", "f", "LTX-");

  private final Windows windows = new Windows(new Wording(messages()), new Phrases(messages()));

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "-",
      value = {
        "1966 | 1967 | -       | -       | from 1966 both left the factory; from 1967 all are new",
        "-    | -    | LT-0398 | LT-0454 | from LT-0398 both left the factory; from LT-0454 all are",
        "1966 | 1967 | LT-0398 | LT-0454 | from LT-0398 (1966) both left the factory; from LT-0454",
        "1966 | -    | -       | LT-0454 | from 1966 both left the factory; from LT-0454 all are",
        "-    | 1967 | -       | -       | nobody knows when the new one began; from 1967 all are",
        "-    | -    | -       | LT-0454 | nobody knows when the new one began; from LT-0454 all",
        "1966 | -    | -       | -       | new ones left from 1966; nobody knows when the last old",
        "-    | -    | LT-0398 | -       | new ones left from LT-0398; nobody knows when the last",
      })
  void tellEveryFormOfTransition(
      @Nullable Integer firstYear,
      @Nullable Integer settledYear,
      @Nullable String firstSerial,
      @Nullable String settledSerial,
      String expected) {
    CutIn cutIn = new CutIn("v", false, firstYear, settledYear, "lt", firstSerial, settledSerial);
    assertThat(windows.transition(cutIn)).startsWith("Old or new: ").contains(expected);
  }

  @Test
  void askForTheSerialWhereOnlyASerialWouldTell() {
    assertThat(windows.open(Sample.fromSerial("v", "lt", "LT-0454"), in(1966, null, null)))
        .contains("recorded by serial (from serial LT-0454 on) and no serial is given");
  }

  @Test
  void askForTheYearWhereOnlyAYearWouldTell() {
    assertThat(windows.open(Sample.fromYear("v", 1966), in(null, LT, "LT-0450")))
        .contains("recorded by year (from 1966 on) and the year of this serial is not");
  }

  @Test
  void sayThatSerialsOfAnotherSeriesDoNotTell() {
    assertThat(windows.open(Sample.fromSerial("v", "lt", "LT-0454"), in(1979, LTX, "LTX-0007")))
        .contains("recorded in another series of serials (from serial LT-0454 on)");
  }

  private static Position in(
      @Nullable Integer year, @Nullable Series series, @Nullable String serial) {
    return new Position(
        Sample.variant("v", "f", 1960, 1980),
        year,
        series,
        series == null || serial == null ? null : series.read(serial).orElseThrow());
  }

  private static ResourceBundleMessageSource messages() {
    ResourceBundleMessageSource source = new ResourceBundleMessageSource();
    source.setBasenames("messages/wording", "messages/expected");
    source.setDefaultEncoding("UTF-8");
    return source;
  }
}
