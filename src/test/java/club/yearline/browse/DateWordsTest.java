package club.yearline.browse;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Forms of EDTF levels 0 and 1 (ISO 8601-2); which text means what: from memory. */
class DateWordsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1966-04-12       | 1966-04-12",
        "1966-04          | 1966-04",
        "1966             | 1966",
        "196X             | the 1960s",
        "19XX             | the 1900s",
        "1966-XX          | 1966, month not known",
        "1966-04-XX       | 1966-04, day not known",
        "1965~            | about 1965",
        "1966?            | 1966, uncertain",
        "1966%            | about 1966, uncertain",
        "1966-23          | autumn 1966",
        "1964/1966        | 1964 to 1966",
        "1964~/1966-06    | about 1964 to 1966-06",
        "1966/..          | 1966 and later",
        "1966/            | from 1966, its end not known",
        "../1966          | up to 1966",
        "/1966            | up to 1966, its beginning not known",
        "Y170000          | Y170000",
      })
  void saysDatesInWords(String edtf, String words) {
    assertThat(new DateWords(Texts.RECORDS).say(edtf)).isEqualTo(words);
  }
}
