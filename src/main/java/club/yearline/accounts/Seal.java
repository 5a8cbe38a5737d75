package club.yearline.accounts;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Optional;
import org.springframework.stereotype.Component;

/**
 * Seals what must be read again and yet not lie open in the database. What is sealed for one person
 * does not open for another, wherever it is copied to.
 */
@Component
class Seal {

  private static final String MARK = "sealed";

  private final SealingKeys keys;

  Seal(SealingKeys keys) {
    this.keys = keys;
  }

  /** What to store of a person's secret: the secret itself where there is no key. */
  String close(long person, String secret) {
    return keys.present().map(key -> closed(key, person, secret)).orElse(secret);
  }

  /** The secret that was stored; empty if its key is missing, or it is not the person's. */
  Optional<String> open(long person, String stored) {
    String[] parts = stored.split(":", 3);
    return parts.length == 3 && parts[0].equals(MARK)
        ? keys.named(parts[1]).flatMap(key -> opened(key, person, parts[2]))
        : Optional.of(stored);
  }

  /** Whether it is stored as it would be today. */
  boolean isToday(String stored) {
    return keys.present().map(key -> stored.startsWith(prefix(key))).orElse(true);
  }

  private static String closed(SealingKey key, long person, String secret) {
    byte[] bytes = (person + " " + secret).getBytes(StandardCharsets.UTF_8);
    return prefix(key) + Base64.getUrlEncoder().withoutPadding().encodeToString(key.close(bytes));
  }

  private static Optional<String> opened(SealingKey key, long person, String text) {
    String owner = person + " ";
    return decoded(text)
        .flatMap(key::open)
        .map(bytes -> new String(bytes, StandardCharsets.UTF_8))
        .filter(opened -> opened.startsWith(owner))
        .map(opened -> opened.substring(owner.length()));
  }

  private static Optional<byte[]> decoded(String text) {
    try {
      return Optional.of(Base64.getUrlDecoder().decode(text));
    } catch (IllegalArgumentException e) {
      // Changed in the database: whoever asks tells that nothing opens.
      return Optional.empty();
    }
  }

  private static String prefix(SealingKey key) {
    return MARK + ":" + key.name() + ":";
  }
}
