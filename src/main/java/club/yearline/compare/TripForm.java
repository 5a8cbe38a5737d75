package club.yearline.compare;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The trip as typed.
 *
 * @param distance how far
 * @param people how many are aboard
 * @param weight what they weigh together
 * @param bags what the baggage weighs
 * @param reserve day, night or own
 * @param minutes the reserve, where it is the reader's own
 * @param elevation of the field
 * @param temperature at the field, in degrees Celsius
 * @param setting of the altimeter, in hPa or inches of mercury
 * @param entered metric, where distance and weights are typed in kilometres, kilograms and metres
 * @param among key of the family whose variants are ranked; all where none is named
 */
public record TripForm(
    @Nullable String distance,
    @Nullable String people,
    @Nullable String weight,
    @Nullable String bags,
    @Nullable String reserve,
    @Nullable String minutes,
    @Nullable String elevation,
    @Nullable String temperature,
    @Nullable String setting,
    @Nullable String entered,
    @Nullable String among) {

  static final String METRIC = "metric";
  static final String NIGHT = "night";
  static final String OWN = "own";

  /** Whether anything of the trip itself was typed. */
  boolean asksTrip() {
    return Stream.of(distance, people, weight, bags, minutes).anyMatch(TripForm::given);
  }

  /** Whether anything of the field was typed. */
  boolean asksField() {
    return Stream.of(elevation, temperature, setting).anyMatch(TripForm::given);
  }

  /** Whether lengths and weights were typed in metric units. */
  public boolean metric() {
    return METRIC.equals(entered);
  }

  /** What stands in an address, in its order; what is not given or usual is left away. */
  Map<String, String> inAddress() {
    Map<String, String> given = new LinkedHashMap<>();
    put(given, "distance", distance);
    put(given, "people", people);
    put(given, "weight", weight);
    put(given, "bags", bags);
    put(given, "reserve", "day".equals(reserve) ? null : reserve);
    put(given, "minutes", minutes);
    put(given, "elevation", elevation);
    put(given, "temperature", temperature);
    put(given, "setting", setting);
    put(given, "entered", metric() ? entered : null);
    put(given, "among", among);
    return given;
  }

  private static void put(Map<String, String> given, String name, @Nullable String value) {
    if (value != null && given(value)) {
      given.put(name, value.strip());
    }
  }

  static boolean given(@Nullable String text) {
    return text != null && !text.isBlank();
  }
}
