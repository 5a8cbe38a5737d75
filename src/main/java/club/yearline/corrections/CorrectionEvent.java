package club.yearline.corrections;

import club.yearline.catalog.EntryRef;
import club.yearline.effectivity.EntryKind;
import club.yearline.tables.Sheet;
import jakarta.persistence.Convert;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Something that happened to a correction, or that somebody said about it. */
@Entity
class CorrectionEvent {

  /** What it was. */
  enum What {
    REMARK,
    SUBMITTED,
    SENT_BACK,
    MENDED,
    APPROVED,
    REJECTED,
    WITHDRAWN;

    /** The word used in message keys and the database. */
    String code() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "correction_event_seq")
  @SequenceGenerator(name = "correction_event_seq", sequenceName = "correction_event_seq")
  private @Nullable Long id;

  private Instant happenedAt;
  private long actorId;
  private What what;
  private @Nullable String note;

  @Convert(converter = Codes.OfKind.class)
  private @Nullable EntryKind mendedKind;

  private @Nullable String mendedKey;
  private @Nullable String mendedSheet;
  private @Nullable String formToken;

  protected CorrectionEvent() {}

  static CorrectionEvent of(What what, long actor, @Nullable String note) {
    CorrectionEvent event = new CorrectionEvent();
    event.what = what;
    event.actorId = actor;
    event.note = note;
    event.happenedAt = Instant.now().truncatedTo(ChronoUnit.MICROS);
    return event;
  }

  /** A slip mended by a moderator; keeps what the author had written. */
  static CorrectionEvent mended(long actor, Proposal before) {
    CorrectionEvent event = of(What.MENDED, actor, null);
    event.mendedKind = before.ref().kind();
    event.mendedKey = before.ref().key();
    event.mendedSheet = before.sheet() == null ? null : SheetText.write(before.sheet());
    return event;
  }

  /** A remark from a form; the same form makes one remark only. */
  static CorrectionEvent remark(long actor, String text, String formToken) {
    CorrectionEvent event = of(What.REMARK, actor, text);
    event.formToken = formToken;
    return event;
  }

  What what() {
    return what;
  }

  long actor() {
    return actorId;
  }

  Instant happenedAt() {
    return happenedAt;
  }

  @Nullable String note() {
    return note;
  }

  boolean cameFrom(String token) {
    return token.equals(formToken);
  }

  /** The entry that was mended; empty for all other events. */
  Optional<EntryRef> mended() {
    return mendedKind == null || mendedKey == null
        ? Optional.empty()
        : Optional.of(new EntryRef(mendedKind, mendedKey));
  }

  /** How the author had the mended entry; null where it was to be withdrawn. */
  @Nullable Sheet mendedFrom() {
    return mendedKind == null || mendedKey == null || mendedSheet == null
        ? null
        : SheetText.read(mendedKind, mendedKey, mendedSheet);
  }
}
