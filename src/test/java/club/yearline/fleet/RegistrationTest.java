package club.yearline.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import club.yearline.web.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Registration marks. That these states write them so is from memory; the marks are invented. */
class RegistrationTest {

  @ParameterizedTest
  @CsvSource({
    "se-abc, SE-ABC, Sweden",
    "SEABC, SE-ABC, Sweden",
    "ln–xyz, LN-XYZ, Norway",
    "n123ab, N123AB, the United States",
    "N-1, N1, the United States",
    "ja1234, JA1234, Japan",
    "c-fabc, C-FABC, Canada",
    "CSABC, CS-ABC, Portugal",
    "d-1234, D-1234, Germany",
    "' g-abcd ', G-ABCD, the United Kingdom",
  })
  void aMarkOfAKnownStateIsWrittenAsThatStateDoes(String typed, String written, String state) {
    Registration read = Registration.of(typed);
    assertThat(read.text()).isEqualTo(written);
    assertThat(read.format().orElseThrow().state()).isEqualTo(state);
  }

  @ParameterizedTest
  @ValueSource(strings = {"SE-AB", "SE-1234", "N0123", "N123IO", "N123456", "G-ABC", "C-ABCD"})
  void aMarkThatDoesNotFitItsStateIsRefused(String typed) {
    assertThatThrownBy(() -> Registration.of(typed))
        .isInstanceOfSatisfying(
            Refusal.class, refusal -> assertThat(refusal.status().value()).isEqualTo(422));
  }

  @ParameterizedTest
  @CsvSource({"qz-1a, QZ-1A", "Q ABC, Q ABC", "æ-12, Æ-12", "SEAB, SEAB"})
  void aMarkOfNoKnownStateIsKeptAsTyped(String typed, String kept) {
    Registration read = Registration.of(typed);
    assertThat(read.text()).isEqualTo(kept);
    assertThat(read.format()).isEmpty();
  }

  @Test
  void noTwoRowsClaimOneMarkAndNoneBeginsWithQ() {
    assertThat(MarkFormat.ALL).extracting(MarkFormat::mark).doesNotHaveDuplicates();
    assertThat(MarkFormat.ALL).noneMatch(f -> f.begins("Q"));
  }
}
