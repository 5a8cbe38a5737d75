package club.yearline.accounts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The rules of NIST SP 800-63B as the brief of this project gives them; lengths from memory. */
class PasswordRulesTest {

  private static final List<String> NAMES =
      List.of("Ann Other", "ann.other@club.example", "Turnstone Owners");

  private static String alone(String password) {
    return PasswordRules.fault(password, PasswordRules.ALONE, NAMES).orElse("");
  }

  private static String beside(String password) {
    return PasswordRules.fault(password, PasswordRules.BESIDE, NAMES).orElse("");
  }

  @Test
  void aPasswordAloneHasFifteenCharactersAndBesideASecondFactorEight() {
    assertThat(alone("wind sock north")).isEmpty();
    assertThat(alone("wind sock west")).isEqualTo("password.short");
    assertThat(beside("windsock")).isNotEqualTo("password.short-beside");
    assertThat(beside("vkdurwq")).isEqualTo("password.short-beside");
    assertThat(beside("vkdurwqp")).isEmpty();
  }

  @Test
  void charactersAreCountedAsPeopleCountThem() {
    assertThat(alone("🛩".repeat(7) + "🌤".repeat(7))).isEqualTo("password.short");
    assertThat(alone("🛩🌤🛬🛫🌧🌈🌪🧭⛽🔧🔩📐📏🗺🕰")).isEmpty();
  }

  @Test
  void sixtyFourCharactersAndMoreAreTaken() {
    String long64 =
        "mole hill, tail wind, dew point, carburettor ice, no flaps today!".substring(0, 64);
    assertThat(alone(long64)).isEmpty();
    assertThat(alone(long64.repeat(4))).isEmpty();
    assertThat(alone(long64.repeat(4) + "!")).isEqualTo("password.long");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "only small letters here",
        "            .            ",
        "ÄÖÜ äöü ßßß ñçé",
        "пароль для ангара",
        "格納庫の扉は風に向いている開け"
      })
  void nothingIsAskedAboutTheKindOfCharacters(String password) {
    assertThat(alone(password)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "password12345678",
        "PASSWORD!!!!!!!!",
        "passwordpassword",
        "aaaaaaaaaaaaaaaaaaa",
        "123456789012345",
        "987654321098765",
        "abababababababab",
        "abcdefghijklmnopqrs",
        "qwertyuiop12345"
      })
  void theCommonestAreRefused(String password) {
    assertThat(alone(password)).isEqualTo("password.common");
  }

  @ParameterizedTest
  @ValueSource(strings = {"password", "iloveyou", "sunshine", "12345678", "Qwertyui"})
  void theCommonestAreRefusedBesideASecondFactorToo(String password) {
    assertThat(beside(password)).isEqualTo("password.common");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ann.other@club.example",
        "Ann Other Ann Other 1",
        "TurnstoneOwners!",
        "yearlineyearline yearline-1966"
      })
  void theOwnNameAndTheClubsAreRefused(String password) {
    assertThat(alone(password)).isIn("password.name", "password.common");
  }
}
