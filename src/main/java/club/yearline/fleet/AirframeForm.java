package club.yearline.fleet;

import club.yearline.effectivity.Position;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The form about an airframe as it was sent: every field as typed.
 *
 * @param meant which of several positions is meant, as {@link #code} names it
 * @param token of the form that registers, so that it registers once
 * @param version of the airframe that the form saw
 */
public record AirframeForm(
    @Nullable String serial,
    @Nullable String variant,
    @Nullable String year,
    @Nullable String registration,
    @Nullable String remarks,
    @Nullable String meant,
    @Nullable String token,
    @Nullable Integer version) {

  /** Nothing typed yet. */
  static AirframeForm empty(@Nullable String serial) {
    return new AirframeForm(
        serial, null, null, null, null, null, UUID.randomUUID().toString(), null);
  }

  /** What is registered. */
  static AirframeForm of(Airframe airframe) {
    String year = airframe.year() == null ? null : airframe.year().toString();
    return new AirframeForm(
        airframe.serial(),
        airframe.variant(),
        year,
        airframe.registration(),
        airframe.remarks(),
        airframe.series() == null ? null : code(airframe.variant(), year, airframe.series()),
        null,
        airframe.version());
  }

  /** The same, having seen another version. */
  AirframeForm at(int seen) {
    return new AirframeForm(
        serial, variant, year, registration, remarks, meant, token, Integer.valueOf(seen));
  }

  /** A position as a form names it. */
  static String code(Position position) {
    String year = position.year() == null ? null : position.year().toString();
    String series = position.series() == null ? "" : position.series().key();
    return code(position.variant().key(), year, series);
  }

  private static String code(String variant, @Nullable String year, String series) {
    return variant + "/" + Objects.requireNonNullElse(year, "") + "/" + series;
  }
}
