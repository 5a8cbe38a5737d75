package club.yearline.fleet;

import club.yearline.effectivity.Position;
import org.jspecify.annotations.Nullable;

/**
 * An airframe to register.
 *
 * @param position what it is, as the engine found it ({@code Located.Found}): variant, year where
 *     known, series and serial where known
 * @param registration its mark as typed; null where none was. It is kept as its state writes it
 * @param remarks plain text; null where there is none
 */
public record NewAirframe(
    Position position, @Nullable String registration, @Nullable String remarks) {

  /** The most characters of remarks. */
  public static final int LONGEST_REMARKS = 4000;

  /**
   * Checks what was typed.
   *
   * @throws club.yearline.web.Refusal if the mark does not fit the format of its state, or a text
   *     is too long
   */
  public NewAirframe {
    registration = Texts.optional(registration, "registration", Registration.LONGEST);
    if (registration != null) {
      registration = Registration.of(registration).text();
    }
    remarks = Texts.optional(remarks, "remarks", LONGEST_REMARKS);
  }
}
