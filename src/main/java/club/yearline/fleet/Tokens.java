package club.yearline.fleet;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What forms carry so that a form sent twice counts once. */
final class Tokens {

  private Tokens() {}

  /** The token of a form, or a new one where it has none that we could have given out. */
  static String of(@Nullable String sent) {
    return sent != null && sent.matches("[0-9a-f-]{36}") ? sent : UUID.randomUUID().toString();
  }
}
