package club.yearline.citation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Forms from memory of EDTF levels 0 and 1; the published table is checked elsewhere. */
class EdtfTest {

  @ParameterizedTest
  @CsvSource({
    "1966, 1966-01-01, 1966-12-31",
    "1966-04, 1966-04-01, 1966-04-30",
    "2004-02, 2004-02-01, 2004-02-29",
    "1966-04-12, 1966-04-12, 1966-04-12",
    "1966-04-12T09:30:01, 1966-04-12, 1966-04-12",
    "1966-04-12T09:30:01Z, 1966-04-12, 1966-04-12",
    "1966-04-12T24:00:00+05:30, 1966-04-12, 1966-04-12",
    "1966?, 1966-01-01, 1966-12-31",
    "1966-04~, 1966-04-01, 1966-04-30",
    "1966-04-12%, 1966-04-12, 1966-04-12",
    "196X, 1960-01-01, 1969-12-31",
    "19XX, 1900-01-01, 1999-12-31",
    "1966-XX, 1966-01-01, 1966-12-31",
    "1966-04-XX, 1966-04-01, 1966-04-30",
    "1966-XX-XX, 1966-01-01, 1966-12-31",
    "1966-21, 1966-01-01, 1966-12-31",
    "1966-24, 1966-01-01, 1966-12-31",
    "0000, 0000-01-01, 0000-12-31",
    "-0044-03, -0044-03-01, -0044-03-31",
    "-004X, -0049-01-01, -0040-12-31",
    "Y12345, +12345-01-01, +12345-12-31",
    "Y-17000, -17000-01-01, -17000-12-31",
    "1965/1967, 1965-01-01, 1967-12-31",
    "1965-04~/1967-02-03?, 1965-04-01, 1967-02-03",
    "1966/.., 1966-01-01,",
    "1966/, 1966-01-01,",
    "../1966-06, , 1966-06-30",
    "/1966, , 1966-12-31",
    "1966/1966-04, 1966-01-01, 1966-04-30"
  })
  void readsLevelsZeroAndOne(
      String text, java.time.LocalDate earliest, java.time.LocalDate latest) {
    Edtf date = Edtf.parse(text);
    assertThat(date.earliest().orElse(null)).isEqualTo(earliest);
    assertThat(date.latest().orElse(null)).isEqualTo(latest);
    assertThat(date).hasToString(text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " 1966",
        "66",
        "1966-4",
        "1966-13",
        "1966-20",
        "1966-25",
        "1966-02-30",
        "1966-21-01",
        "1XXX",
        "XXXX",
        "1966-XX-12",
        "196x",
        "1966??",
        "?1966",
        "-0000",
        "Y1966",
        "Y012345",
        "/",
        "../..",
        "1967/1965",
        "1965/1966/1967",
        "12 April 1966",
        "1966-04-12T25:00:00",
        "1966-04-12T09:30",
        "April 1966",
        "1966 ",
        "+1966",
        "2004-06-11T",
        "1966-04-12/T09:30:01"
      })
  void refusesAllElse(String text) {
    assertThat(Edtf.read(text)).isEmpty();
  }

  @Test
  void saysWhatIsWrong() {
    assertThatThrownBy(() -> Edtf.parse("1967/1965"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("The interval ends before it starts: 1967/1965");
    assertThatThrownBy(() -> Edtf.parse("1966-02-30"))
        .hasMessage("There is no such day or month: 1966-02-30");
  }

  @Test
  void holdsYearsBeyondTheCalendar() {
    assertThat(Edtf.parse("Y99999999999999999999").earliest()).isPresent();
  }
}
