package club.yearline.fleet;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The form about something seen as it was sent: every field as typed.
 *
 * @param token so that it is recorded once
 */
public record ObservationForm(
    @Nullable String feature,
    @Nullable String value,
    @Nullable String on,
    @Nullable String observer,
    @Nullable String note,
    @Nullable String token) {

  /** Nothing typed yet; most is seen today. */
  static ObservationForm of(String feature) {
    return new ObservationForm(
        feature,
        null,
        LocalDate.now(ZoneOffset.UTC).toString(),
        null,
        null,
        UUID.randomUUID().toString());
  }
}
