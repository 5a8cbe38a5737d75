package club.yearline.accounts;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/** Long random texts for links and cookies, and what is stored of them. */
public final class Secret {

  /** 256 bits: nobody guesses one, so a quick hash guards it. */
  private static final int BYTES = 32;

  private static final SecureRandom RANDOM = new SecureRandom();

  private Secret() {}

  /** A new secret, fit for an address. */
  public static String fresh() {
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes(BYTES));
  }

  static byte[] bytes(int count) {
    byte[] bytes = new byte[count];
    RANDOM.nextBytes(bytes);
    return bytes;
  }

  /** What is stored of a secret, and what is looked for. */
  public static String hash(String secret) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(digest.digest(secret.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java platform knows SHA-256", e);
    }
  }
}
