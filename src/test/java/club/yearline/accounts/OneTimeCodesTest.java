package club.yearline.accounts;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.InvalidKeyException;
import java.time.Instant;
import javax.crypto.spec.SecretKeySpec;
import org.apache.commons.codec.binary.Base32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One-time codes against the test vectors of RFC 6238.
 *
 * <p>Source: RFC 6238, TOTP: Time-Based One-Time Password Algorithm (May 2011), Appendix B, Table
 * 1, rows of mode SHA1; the shared secret is the ASCII text 12345678901234567890, steps of thirty
 * seconds, T0 = 0. Read in Debian's package doc-rfc-informational.
 */
class OneTimeCodesTest {

  private static final byte[] SECRET = "12345678901234567890".getBytes(StandardCharsets.US_ASCII);
  private static final String TYPED = new Base32().encodeToString(SECRET);

  @ParameterizedTest
  @CsvSource({
    "59, 94287082",
    "1111111109, 07081804",
    "1111111111, 14050471",
    "1234567890, 89005924",
    "2000000000, 69279037",
    "20000000000, 65353130"
  })
  void codesAreThoseOfTheStandard(long time, String code) throws InvalidKeyException {
    var generator = OneTimeCodes.generator(8);
    var key = new SecretKeySpec(SECRET, generator.getAlgorithm());
    assertThat(generator.generateOneTimePasswordString(key, Instant.ofEpochSecond(time)))
        .isEqualTo(code);
    // Six digits are the last six of eight: both are remainders of one number.
    assertThat(OneTimeCodes.code(TYPED, Instant.ofEpochSecond(time))).isEqualTo(code.substring(2));
  }

  @ParameterizedTest
  @CsvSource({"1111111109, 37037036", "1111111079, 37037035", "1111111139, 37037037"})
  void aCodeIsGoodForItsStepAndTheOnesBesideIt(long typedAt, long step) {
    Instant now = Instant.ofEpochSecond(1111111109);
    String code = OneTimeCodes.code(TYPED, Instant.ofEpochSecond(typedAt));
    assertThat(OneTimeCodes.step(TYPED, " " + code.substring(0, 3) + " " + code.substring(3), now))
        .hasValue(step);
  }

  @ParameterizedTest
  @CsvSource({"1111111049", "1111111169", "59"})
  void aCodeOfAnotherTimeIsNone(long typedAt) {
    String code = OneTimeCodes.code(TYPED, Instant.ofEpochSecond(typedAt));
    assertThat(OneTimeCodes.step(TYPED, code, Instant.ofEpochSecond(1111111109))).isEmpty();
  }

  @Test
  void whatIsNoCodeIsNone() {
    assertThat(OneTimeCodes.step(TYPED, "", Instant.EPOCH)).isEmpty();
    assertThat(OneTimeCodes.step(TYPED, "x".repeat(10_000), Instant.EPOCH)).isEmpty();
  }

  @Test
  void theAddressForTheAppIsWholeWhateverTheClubIsCalled() {
    assertThat(OneTimeCodes.address("Club & Söhne: 1?", "ann@club.example", "ABC"))
        .isEqualTo(
            "otpauth://totp/Club%20%26%20S%C3%B6hne%3A%201%3F:ann%40club.example"
                + "?secret=ABC&issuer=Club%20%26%20S%C3%B6hne%3A%201%3F");
  }
}
