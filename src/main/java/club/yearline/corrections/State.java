package club.yearline.corrections;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/** Where a correction stands. */
enum State {
  /** Being written; seen by its author only. */
  DRAFT,
  /** Handed in; waits for a moderator. */
  SUBMITTED,
  /** Back with its author, who is asked to improve it. */
  SENT_BACK,
  /** Published. */
  APPROVED,
  /** Refused. */
  REJECTED,
  /** Given up by its author. */
  WITHDRAWN;

  private static final Set<State> WITH_AUTHOR = EnumSet.of(DRAFT, SENT_BACK);

  /** Whether a correction in this state may come into the other. */
  boolean canBecome(State next) {
    return switch (this) {
      case DRAFT, SENT_BACK -> next == SUBMITTED || next == WITHDRAWN;
      case SUBMITTED ->
          next == SENT_BACK || next == APPROVED || next == REJECTED || next == WITHDRAWN;
      case APPROVED, REJECTED, WITHDRAWN -> false;
    };
  }

  /** Whether its author may write in it. */
  boolean isWithAuthor() {
    return WITH_AUTHOR.contains(this);
  }

  /** Whether nothing can become of it any more. */
  boolean isFinal() {
    return this == APPROVED || this == REJECTED || this == WITHDRAWN;
  }

  /** The word used in addresses, message keys and the database. */
  String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
