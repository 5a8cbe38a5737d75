package club.yearline.compare;

import club.yearline.web.Phrases;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads a trip and a field from what was typed, and says what cannot be read. */
final class TripReader {

  private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]{1,6}(\\.[0-9]{1,3})?");
  private static final int ECHO = 40;

  private static final Amount DAY = Amount.exactly("30", Scale.MINUTE);
  private static final Amount NIGHT = Amount.exactly("45", Scale.MINUTE);

  /** What is beyond every light aircraft and field is a slip of the pen. */
  private static final Limits DISTANCE = new Limits("1", "3000");

  private static final Limits WEIGHT = new Limits("0", "5000");
  private static final Limits PEOPLE = new Limits("1", "20");
  private static final Limits MINUTES = new Limits("0", "600");
  private static final Limits ELEVATION = new Limits("-1500", "20000");
  private static final Limits TEMPERATURE = new Limits("-60", "60");
  private static final Limits HECTOPASCALS = new Limits("870", "1085");
  private static final Limits INCHES = new Limits("25.7", "32");

  /**
   * Hectopascals of an inch of mercury, conventional: from memory, for NIST SP 811 was not at hand.
   */
  private static final BigDecimal INCH_OF_MERCURY = new BigDecimal("33.86389");

  private static final BigDecimal MOST_INCHES = new BigDecimal("100");

  private final TripForm form;
  private final Phrases phrases;
  private final Map<String, String> faults = new LinkedHashMap<>();

  TripReader(TripForm form, Phrases phrases) {
    this.form = form;
    this.phrases = phrases;
  }

  private record Limits(BigDecimal least, BigDecimal most) {

    Limits(String least, String most) {
      this(new BigDecimal(least), new BigDecimal(most));
    }

    boolean hold(BigDecimal value) {
      return least.compareTo(value) <= 0 && value.compareTo(most) <= 0;
    }
  }

  /** What is wrong, by field of the form; complete once trip and field were read. */
  Map<String, String> faults() {
    return faults;
  }

  /** The reserve in hours: of the trip, and of the endurance where there is no trip. */
  Amount reserve() {
    if (TripForm.OWN.equals(form.reserve())) {
      BigDecimal own = number("minutes", form.minutes(), MINUTES, Scale.MINUTE, Scale.MINUTE);
      if (own == null && !faults.containsKey("minutes")) {
        faults.put("minutes", phrases.of("compare.fault.minutes"));
      }
      return own == null
          ? DAY.in(Scale.H)
          : new Amount(own, Scale.MINUTE, Amount.EXACT).in(Scale.H);
    }
    return (TripForm.NIGHT.equals(form.reserve()) ? NIGHT : DAY).in(Scale.H);
  }

  /** The trip; empty where none was asked or it is at fault. */
  Optional<Trip> trip() {
    if (!form.asksTrip()) {
      return Optional.empty();
    }
    Scale far = form.metric() ? Scale.KM : Scale.NMI;
    BigDecimal distance = number("distance", form.distance(), DISTANCE, far, Scale.NMI);
    if (distance == null && !faults.containsKey("distance")) {
      faults.put("distance", phrases.of("compare.fault.distance"));
    }
    Integer people = people();
    Amount weight = weight("weight", form.weight());
    if (people != null && !TripForm.given(form.weight())) {
      faults.put("weight", phrases.of("compare.fault.weight"));
    }
    Amount bags = weight("bags", form.bags());
    Amount reserve = reserve();
    return distance == null || !faults.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Trip(new Amount(distance, Scale.NMI, Amount.EXACT), reserve, people, weight, bags));
  }

  /** The field; empty where none was asked or it is at fault. */
  Optional<Field> field() {
    if (!form.asksField()) {
      return Optional.empty();
    }
    Scale high = form.metric() ? Scale.M : Scale.FT;
    BigDecimal elevation = number("elevation", form.elevation(), ELEVATION, high, Scale.FT);
    if (elevation == null && !faults.containsKey("elevation")) {
      faults.put("elevation", phrases.of("compare.fault.elevation"));
    }
    BigDecimal temperature =
        number("temperature", form.temperature(), TEMPERATURE, Scale.COUNT, Scale.COUNT);
    BigDecimal setting = setting();
    boolean faulty =
        faults.keySet().stream().anyMatch(f -> f.matches("elevation|temperature|setting"));
    return elevation == null || faulty
        ? Optional.empty()
        : Optional.of(
            new Field(
                elevation.doubleValue(),
                temperature == null ? null : Double.valueOf(temperature.doubleValue()),
                setting == null ? Atmosphere.SEA_LEVEL_PRESSURE : setting.doubleValue(),
                setting == null));
  }

  private @Nullable Integer people() {
    BigDecimal people = number("people", form.people(), PEOPLE, Scale.COUNT, Scale.COUNT);
    if (people != null && people.stripTrailingZeros().scale() > 0) {
      faults.put("people", phrases.of("compare.fault.people"));
      return null;
    }
    return people == null ? null : Integer.valueOf(people.intValue());
  }

  private Amount weight(String name, @Nullable String typed) {
    Scale unit = form.metric() ? Scale.KG : Scale.LB;
    BigDecimal weight = number(name, typed, WEIGHT, unit, Scale.LB);
    return weight == null ? Amount.none(Scale.LB) : new Amount(weight, Scale.LB, Amount.EXACT);
  }

  /** In hPa; what is far too small for that was read from an altimeter in inches of mercury. */
  private @Nullable BigDecimal setting() {
    if (!TripForm.given(form.setting())) {
      return null;
    }
    BigDecimal typed = readable("setting", form.setting());
    if (typed == null) {
      return null;
    }
    boolean inches = typed.compareTo(MOST_INCHES) < 0;
    if (!(inches ? INCHES : HECTOPASCALS).hold(typed)) {
      faults.put(
          "setting", phrases.of("compare.fault.setting", typed.toPlainString().replace('-', '−')));
      return null;
    }
    return inches ? typed.multiply(INCH_OF_MERCURY) : typed;
  }

  private @Nullable BigDecimal number(
      String name, @Nullable String typed, Limits limits, Scale entered, Scale worked) {
    BigDecimal number = readable(name, typed);
    if (number == null) {
      return null;
    }
    BigDecimal converted = entered.convert(number, worked);
    if (limits.hold(converted)) {
      return converted;
    }
    faults.put(
        name,
        phrases.of(
            "compare.fault.limits." + name,
            number.toPlainString().replace('-', '−'),
            shown(limits.least(), worked, entered),
            shown(limits.most(), worked, entered),
            entered.sign()));
    return null;
  }

  private static String shown(BigDecimal limit, Scale worked, Scale entered) {
    return worked
        .convert(limit, entered)
        .setScale(0, limit.signum() < 0 ? RoundingMode.DOWN : RoundingMode.HALF_UP)
        .toPlainString()
        .replace('-', '−');
  }

  private @Nullable BigDecimal readable(String name, @Nullable String typed) {
    if (typed == null || typed.isBlank()) {
      return null;
    }
    String text = typed.strip().replace('−', '-');
    if (!NUMBER.matcher(text).matches()) {
      String echo = text.length() > ECHO ? text.substring(0, ECHO) + "…" : text;
      faults.put(name, phrases.of("compare.fault.number", echo));
      return null;
    }
    return new BigDecimal(text);
  }
}
