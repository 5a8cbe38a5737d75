package club.yearline.accounts;

import java.util.Base64;
import java.util.Optional;
import javax.crypto.SecretKey;
import javax.crypto.spec.SecretKeySpec;
import org.springframework.security.crypto.encrypt.AesBytesEncryptor;
import org.springframework.security.crypto.encrypt.AesBytesEncryptor.CipherAlgorithm;
import org.springframework.security.crypto.encrypt.BytesEncryptor;
import org.springframework.security.crypto.keygen.KeyGenerators;

/**
 * A key under which secrets are sealed: AES with 256 bits in Galois/Counter mode, so that what was
 * changed does not open.
 *
 * @param name tells keys apart, and nothing about them
 */
record SealingKey(String name, BytesEncryptor cipher) {

  private static final int BYTES = 32;
  private static final int NONCE_BYTES = 16;
  private static final int TAG_BYTES = 16;
  private static final int NAME_LENGTH = 8;

  /**
   * Reads a key.
   *
   * @throws IllegalArgumentException if the text is none; the message says what to do and does not
   *     repeat the text
   */
  static SealingKey of(String text) {
    byte[] key;
    try {
      key = Base64.getDecoder().decode(text.strip());
    } catch (IllegalArgumentException e) {
      key = new byte[0];
    }
    if (key.length != BYTES) {
      throw new IllegalArgumentException(
          "A secret key must be 32 bytes in Base64, such as \"openssl rand -base64 32\" prints");
    }
    SecretKey secret = new SecretKeySpec(key, "AES");
    return new SealingKey(
        Secret.hash("name of " + text.strip()).substring(0, NAME_LENGTH),
        new AesBytesEncryptor(
            secret, KeyGenerators.secureRandom(NONCE_BYTES), CipherAlgorithm.GCM));
  }

  byte[] close(byte[] open) {
    return cipher.encrypt(open);
  }

  /** What was closed; empty if it was not closed with this key, or was changed since. */
  Optional<byte[]> open(byte[] closed) {
    try {
      return closed.length < NONCE_BYTES + TAG_BYTES
          ? Optional.empty()
          : Optional.of(cipher.decrypt(closed));
    } catch (IllegalStateException e) {
      // How the cipher says so.
      return Optional.empty();
    }
  }

  /** A new key, as text. */
  static String fresh() {
    return Base64.getEncoder().encodeToString(Secret.bytes(BYTES));
  }
}
