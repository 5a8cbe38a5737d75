package club.yearline.compare;

import org.jspecify.annotations.Nullable;

/**
 * The field to start from.
 *
 * @param elevation in feet
 * @param temperature in degrees Celsius; null where it was not given
 * @param setting of the altimeter, in hPa
 * @param standardSetting whether the setting was not given and is the standard one
 */
record Field(
    double elevation, @Nullable Double temperature, double setting, boolean standardSetting) {

  double pressureAltitude() {
    return Atmosphere.pressureAltitude(elevation, setting);
  }

  /** Null where no temperature was given. */
  @Nullable Double densityAltitude() {
    return temperature == null
        ? null
        : Double.valueOf(Atmosphere.densityAltitude(pressureAltitude(), temperature));
  }
}
