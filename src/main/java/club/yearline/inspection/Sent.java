package club.yearline.inspection;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Feature;
import club.yearline.expected.Asked;
import club.yearline.spotting.Seen;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A form or an address as it was sent, read: the claim as typed, and what was seen. Observations
 * come as {@code o=FEATURE:VALUE}, repeated, or as one field {@code o.FEATURE} for each feature;
 * the last word on a feature counts.
 *
 * @param asked the claim as typed
 * @param seen what can be read
 * @param typed values that cannot be read, by feature key
 * @param leftOut texts that name no feature, or a value that the feature does not have
 */
record Sent(Asked asked, List<Seen> seen, Map<String, String> typed, List<String> leftOut) {

  private static final String PREFIX = "o.";
  private static final String LIST = "o";

  /** More than any catalogue has features to look at. */
  private static final int MOST = 400;

  private static final int ECHO = 60;

  /** Reads the parameters of a request. */
  static Sent read(Catalogue catalogue, Map<String, String[]> parameters) {
    Reader reader = new Reader(catalogue);
    for (String code : parameters.getOrDefault(LIST, new String[0])) {
      int colon = code.indexOf(':');
      reader.add(code, code.substring(0, Math.max(colon, 0)), code.substring(colon + 1));
    }
    parameters.forEach(
        (name, values) -> {
          if (name.startsWith(PREFIX) && values.length > 0) {
            String value = values[values.length - 1];
            String feature = name.substring(PREFIX.length());
            reader.add(feature + ":" + value, feature, value);
          }
        });
    return new Sent(
        new Asked(one(parameters, "serial"), one(parameters, "variant"), one(parameters, "year")),
        List.copyOf(reader.seen.values()),
        reader.typed,
        reader.leftOut);
  }

  /** Whether something was sent that could not be used. */
  boolean isFaulty() {
    return !typed.isEmpty() || !leftOut.isEmpty();
  }

  /** The value seen of a feature; null where it was not looked at. */
  @Nullable String value(Feature feature) {
    return seen.stream()
        .filter(s -> s.feature().key().equals(feature.key()))
        .map(Seen::value)
        .findFirst()
        .orElse(null);
  }

  private static @Nullable String one(Map<String, String[]> parameters, String name) {
    String[] values = parameters.get(name);
    return values == null || values.length == 0 ? null : values[0];
  }

  private static final class Reader {

    private final Catalogue catalogue;
    private final Map<String, Seen> seen = new LinkedHashMap<>();
    private final Map<String, String> typed = new LinkedHashMap<>();
    private final List<String> leftOut = new ArrayList<>();

    Reader(Catalogue catalogue) {
      this.catalogue = catalogue;
    }

    void add(String code, String key, String value) {
      if (value.isBlank() || seen.size() >= MOST) {
        return;
      }
      Optional<Feature> feature = catalogue.feature(key);
      Optional<Seen> read = feature.flatMap(f -> Seen.read(f, decimal(f, value)));
      if (read.isPresent()) {
        seen.put(key, read.get());
        typed.remove(key);
      } else if (feature.filter(Feature::isNumber).isPresent()) {
        typed.put(key, shortened(value.strip()));
      } else if (leftOut.size() < MOST) {
        leftOut.add(shortened(code));
      }
    }

    /** A telephone's keypad may have a comma only. */
    private static String decimal(Feature feature, String value) {
      return feature.isNumber() ? value.replace(',', '.') : value;
    }

    private static String shortened(String text) {
      return text.length() <= ECHO ? text : text.substring(0, ECHO) + "…";
    }
  }
}
