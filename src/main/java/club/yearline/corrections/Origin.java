package club.yearline.corrections;

import java.util.Locale;

/** How a correction came to be. */
enum Origin {
  /** Typed into forms; stands on at least one source. */
  TYPED,
  /** Prepared from a revision, to take back what that did. */
  UNDO,
  /** Read from a data package, which brings its own sources. */
  PACKAGE;

  /** The word used in message keys and the database. */
  String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Whether it needs a source of its own before it can be handed in. */
  boolean needsGround() {
    return this == TYPED;
  }
}
