package club.yearline.fleet;

import club.yearline.effectivity.Values;
import club.yearline.uploads.Evidence;
import club.yearline.web.Refusal;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A value seen on an airframe on a date.
 *
 * @param feature key of the feature
 * @param value key of one of its values, or a number in its unit
 * @param on the day
 * @param observer who looked; null where that was the owner of the airframe
 * @param note plain text; null where there is none
 * @param photographs as {@code EvidenceDesk.photograph} has taken them
 */
public record Seen(
    String feature,
    String value,
    LocalDate on,
    @Nullable String observer,
    @Nullable String note,
    List<Evidence> photographs) {

  /** The most photographs of one observation. */
  public static final int MOST_PHOTOGRAPHS = 5;

  static final int LONGEST_OBSERVER = 120;
  static final int LONGEST_NOTE = 1000;
  private static final LocalDate FIRST = LocalDate.of(1903, 1, 1);

  /**
   * Checks what was typed; whether there is such a feature and value is checked when it is stored.
   *
   * @throws Refusal if a text is too long, the day cannot be, or there are too many photographs
   */
  public Seen {
    value = Values.canonical(value);
    observer = Texts.optional(observer, "observer", LONGEST_OBSERVER);
    note = Texts.optional(note, "note", LONGEST_NOTE);
    photographs = List.copyOf(photographs);
    // Somewhere it is tomorrow already.
    if (on.isBefore(FIRST) || on.isAfter(LocalDate.now(ZoneOffset.UTC).plusDays(1))) {
      throw Refusal.unprocessable("fleet-day", on).at("on", "fleet.fault.day");
    }
    requireRoom(photographs.size());
  }

  /** Checks, before any work is spent on them, that there are not too many photographs. */
  static void requireRoom(int photographs) {
    if (photographs > MOST_PHOTOGRAPHS) {
      throw Refusal.unprocessable("fleet-photographs-many", MOST_PHOTOGRAPHS)
          .at("photographs", "fleet.fault.photographs-many", MOST_PHOTOGRAPHS);
    }
  }
}
