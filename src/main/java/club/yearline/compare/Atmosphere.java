package club.yearline.compare;

/**
 * The ICAO standard atmosphere below 11 km, dry air, in the closed form that follows from a
 * constant lapse of temperature. The constants are those that the reference table of the tests
 * names; the text of the standard itself was not read. No rule of thumb is used.
 */
final class Atmosphere {

  /** Pressure at sea level, in hPa; also what an altimeter is set to where nothing else is said. */
  static final double SEA_LEVEL_PRESSURE = 1013.25;

  private static final double SEA_LEVEL_TEMPERATURE = 288.15;
  private static final double LAPSE = 0.0065;
  private static final double GRAVITY = 9.80665;
  private static final double GAS = 287.05287;
  private static final double FOOT = 0.3048;
  private static final double FREEZING = 273.15;

  /** Power of the temperature ratio that the pressure ratio is; the density ratio's is one less. */
  private static final double POWER = GRAVITY / (GAS * LAPSE);

  private Atmosphere() {}

  /** Temperature at a height in feet, in degrees Celsius. */
  static double temperature(double feet) {
    return SEA_LEVEL_TEMPERATURE * temperatureRatio(feet) - FREEZING;
  }

  /** Pressure at a height in feet, in hPa. */
  static double pressure(double feet) {
    return SEA_LEVEL_PRESSURE * Math.pow(temperatureRatio(feet), POWER);
  }

  /** Density at a height in feet, as a part of that at sea level. */
  static double densityRatio(double feet) {
    return Math.pow(temperatureRatio(feet), POWER - 1);
  }

  /** The height in feet at which the standard atmosphere has a pressure in hPa. */
  static double heightOf(double pressure) {
    return height(Math.pow(pressure / SEA_LEVEL_PRESSURE, 1 / POWER));
  }

  /**
   * What an altimeter at a field shows when set to the standard pressure. A setting other than that
   * moves the scale by the height that it stands for.
   *
   * @param elevation of the field, in feet
   * @param setting with which the altimeter shows the field's elevation, in hPa
   */
  static double pressureAltitude(double elevation, double setting) {
    return elevation + heightOf(setting);
  }

  /**
   * The height at which the standard atmosphere is as dense as the air here.
   *
   * @param pressureAltitude in feet
   * @param temperature of the air, in degrees Celsius
   */
  static double densityAltitude(double pressureAltitude, double temperature) {
    double density =
        Math.pow(temperatureRatio(pressureAltitude), POWER)
            * SEA_LEVEL_TEMPERATURE
            / (temperature + FREEZING);
    return height(Math.pow(density, 1 / (POWER - 1)));
  }

  private static double temperatureRatio(double feet) {
    return 1 - LAPSE * feet * FOOT / SEA_LEVEL_TEMPERATURE;
  }

  private static double height(double temperatureRatio) {
    return (1 - temperatureRatio) * SEA_LEVEL_TEMPERATURE / LAPSE / FOOT;
  }
}
