package club.yearline.citation;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Dates of sources as citation data. Every text here is an EDTF date; EdtfTest has its sources. */
class IssuedTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          1966       | {date-parts=[[1966]]}
          1966-04    | {date-parts=[[1966, 4]]}
          1966-04-12 | {date-parts=[[1966, 4, 12]]}
          1971?      | {date-parts=[[1971]], circa=true}
          1969~      | {date-parts=[[1969]], circa=true}
          1998%      | {date-parts=[[1998]], circa=true}
          1986-XX    | {date-parts=[[1986]]}
          1986-04-XX | {date-parts=[[1986, 4]]}
          1987-21    | {date-parts=[[1987]], season=1}
          1969-24    | {date-parts=[[1969]], season=4}
          196X       | {literal=1960s}
          1956/1988  | {date-parts=[[1956], [1988]]}
          1956~/1988 | {date-parts=[[1956], [1988]], circa=true}
          2019/..    | {literal=2019–}
          ../1988    | {literal=–1988}
          19XX       | {literal=19XX}
          """)
  void saysADateAsCitationDataHasIt(String edtf, String expected) {
    Issued issued = Issued.read(edtf);
    assertThat(issued).isNotNull();
    assertThat(issued.csl()).hasToString(expected);
  }

  @Test
  void isNothingWhereNoDateIsRecorded() {
    assertThat(Issued.read(null)).isNull();
  }
}
