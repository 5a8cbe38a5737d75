package club.yearline.accounts;

import com.eatthepath.otp.TimeBasedOneTimePasswordGenerator;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.security.InvalidKeyException;
import java.security.MessageDigest;
import java.time.Duration;
import java.time.Instant;
import java.util.OptionalLong;
import javax.crypto.spec.SecretKeySpec;
import org.apache.commons.codec.binary.Base32;

/** One-time codes by time (RFC 6238), as every authenticator app makes them. */
final class OneTimeCodes {

  static final Duration STEP = Duration.ofSeconds(30);

  private static final int DIGITS = 6;

  /** The length of the hash, as RFC 4226 recommends. */
  private static final int SECRET_BYTES = 20;

  /** A clock that is a step off, or a slow typist. */
  private static final int STEPS_OFF = 1;

  private static final TimeBasedOneTimePasswordGenerator GENERATOR = generator(DIGITS);

  private OneTimeCodes() {}

  static TimeBasedOneTimePasswordGenerator generator(int digits) {
    return new TimeBasedOneTimePasswordGenerator(
        STEP, digits, TimeBasedOneTimePasswordGenerator.TOTP_ALGORITHM_HMAC_SHA1);
  }

  /** A new secret, in the letters that people and apps type. */
  static String newSecret() {
    return new Base32().encodeToString(Secret.bytes(SECRET_BYTES));
  }

  /** The code of a moment. */
  static String code(String secret, Instant when) {
    try {
      byte[] key = new Base32().decode(secret);
      return GENERATOR.generateOneTimePasswordString(
          new SecretKeySpec(key, GENERATOR.getAlgorithm()), when);
    } catch (InvalidKeyException e) {
      throw new IllegalStateException("A stored secret is no key", e);
    }
  }

  /** The time step that a code is of, if it is of one around now. */
  static OptionalLong step(String secret, String typed, Instant now) {
    byte[] code = typed.replaceAll("\\s", "").getBytes(StandardCharsets.UTF_8);
    long current = now.getEpochSecond() / STEP.toSeconds();
    for (long step = current - STEPS_OFF; step <= current + STEPS_OFF; step++) {
      String right = code(secret, Instant.ofEpochSecond(step * STEP.toSeconds()));
      if (MessageDigest.isEqual(code, right.getBytes(StandardCharsets.UTF_8))) {
        return OptionalLong.of(step);
      }
    }
    return OptionalLong.empty();
  }

  /** What the square code says to the app. */
  static String address(String issuer, String account, String secret) {
    return "otpauth://totp/%s:%s?secret=%s&issuer=%s"
        .formatted(encoded(issuer), encoded(account), secret, encoded(issuer));
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
  }
}
