package club.yearline.accounts;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Something that happened and matters to security.
 *
 * @param person who did it; null where nobody was known
 * @param about whose account it was about; null where none
 * @param origin from where, shortened
 * @param detail a word more, never a secret or a person's data
 */
record SecurityEvent(
    Instant happenedAt,
    Kind kind,
    @Nullable Long person,
    @Nullable Long about,
    @Nullable String origin,
    @Nullable String detail) {

  enum Kind {
    SIGNED_IN,
    SIGNED_IN_BY_PASSKEY,
    SIGN_IN_FAILED,
    SIGN_IN_SLOWED,
    SIGNED_OUT,
    SESSION_ENDED,
    SIGNED_OUT_EVERYWHERE,
    PASSWORD_CHANGED,
    PASSWORD_RESET,
    RESET_ASKED,
    RESET_LINK_MADE,
    EMAIL_CHANGED,
    SECOND_FACTOR_ON,
    SECOND_FACTOR_OFF,
    RECOVERY_CODE_USED,
    RECOVERY_CODES_RENEWED,
    PASSKEY_ADDED,
    PASSKEY_REMOVED,
    PASSKEY_COUNT_WENT_BACK,
    KEEPER_LINK_MADE,
    KEEPER_SET_UP,
    INVITED,
    INVITATION_REVOKED,
    JOINED,
    JOIN_ASKED,
    JOIN_ACCEPTED,
    JOIN_DECLINED,
    ROLE_CHANGED,
    ACCOUNT_CLOSED,
    SETTINGS_CHANGED
  }
}
