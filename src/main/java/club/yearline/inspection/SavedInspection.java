package club.yearline.inspection;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An inspection as it was saved.
 *
 * @param id given by the inspector's device
 * @param airframe number of the airframe in the register
 * @param revision the revision of the catalogue that it was held against
 * @param variant key of the variant claimed
 * @param year the year claimed; null where none was
 * @param serial the serial claimed, as stamped; null where none was
 * @param seen what was seen, as {@code FEATURE:VALUE}
 * @param on the day
 */
record SavedInspection(
    UUID id,
    long airframe,
    int revision,
    String variant,
    @Nullable Integer year,
    @Nullable String serial,
    List<String> seen,
    LocalDate on) {

  /** The same as a form sends it. */
  Map<String, String[]> parameters() {
    Map<String, String[]> parameters = new HashMap<>();
    parameters.put("variant", new String[] {variant});
    if (year != null) {
      parameters.put("year", new String[] {year.toString()});
    }
    if (serial != null) {
      parameters.put("serial", new String[] {serial});
    }
    parameters.put("o", seen.toArray(String[]::new));
    return parameters;
  }
}
