package club.yearline.spotting;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Visibility;
import club.yearline.web.Phrases;
import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a request asks of the page: what can be understood of its address, and what is wrong with
 * the rest.
 *
 * @param address what was understood
 * @param faults what was not, in words
 */
record SpotReading(SpotAddress address, List<String> faults) {

  /** More would not be read. */
  private static final int MOST_FAULTS = 8;

  /** How much of a typed text is repeated. */
  private static final int ECHO = 60;

  static SpotReading of(Catalogue catalogue, HttpServletRequest request, Phrases phrases) {
    return new Reader(catalogue, request, phrases).read();
  }

  private static final class Reader {
    private final Catalogue catalogue;
    private final HttpServletRequest request;
    private final Phrases phrases;
    private final List<String> faults = new ArrayList<>();

    Reader(Catalogue catalogue, HttpServletRequest request, Phrases phrases) {
      this.catalogue = catalogue;
      this.request = request;
      this.phrases = phrases;
    }

    SpotReading read() {
      Told told = Told.read(catalogue, all("o"));
      told.misread().forEach(m -> fault(m, phrases));
      SpotAddress address =
          new SpotAddress(
              family(), standing(), told.seen(), skipped(told.seen()), feature("ask").orElse(null));
      return new SpotReading(typed(address), shown());
    }

    /** A figure comes from a form of two fields. */
    private SpotAddress typed(SpotAddress address) {
      String value = request.getParameter("value");
      Optional<Feature> feature = feature("feature");
      if (value == null || feature.isEmpty()) {
        return address;
      }
      Told told =
          Told.of(
              catalogue, List.of(new Told.Pairing(feature.get().key(), value.replace(',', '.'))));
      told.misread().forEach(m -> fault(m, phrases));
      return told.isClean() ? address.seeing(told.seen().get(0)) : address.asking(feature.get());
    }

    private List<String> all(String name) {
      String[] values = request.getParameterValues(name);
      return values == null ? List.of() : List.of(values);
    }

    private @Nullable String family() {
      String key = request.getParameter("family");
      if (key == null || key.isBlank() || catalogue.family(key.strip()).isPresent()) {
        return key == null ? null : key.strip();
      }
      fault("family", key);
      return null;
    }

    private Visibility standing() {
      String code = request.getParameter("visibility");
      if (code == null || code.isBlank()) {
        return SpotAddress.USUAL;
      }
      return Stream.of(Visibility.values())
          .filter(v -> v.code().equals(code.strip()))
          .findFirst()
          .orElseGet(
              () -> {
                fault("visibility", code);
                return SpotAddress.USUAL;
              });
    }

    private List<Feature> skipped(List<Seen> seen) {
      Map<String, Feature> skipped = new LinkedHashMap<>();
      for (String key : all("skip").stream().distinct().limit(Told.MOST).toList()) {
        known(key).ifPresent(f -> skipped.put(f.key(), f));
      }
      seen.forEach(s -> skipped.remove(s.feature().key()));
      return List.copyOf(skipped.values());
    }

    private Optional<Feature> feature(String name) {
      String key = request.getParameter(name);
      return key == null || key.isBlank() ? Optional.empty() : known(key);
    }

    private Optional<Feature> known(String key) {
      Optional<Feature> feature = catalogue.feature(key.strip());
      if (feature.isEmpty()) {
        fault("feature", key);
      }
      return feature;
    }

    private void fault(Misread misread, Phrases words) {
      Feature feature = misread.feature();
      String values = feature == null ? "" : String.join(", ", labels(feature));
      faults.add(
          words.of(
              "misread." + misread.why().code(),
              shortened(misread.text()),
              feature == null ? "" : feature.name(),
              values));
    }

    private static List<String> labels(Feature feature) {
      return feature.values().stream().map(v -> v.label()).toList();
    }

    private void fault(String what, String text) {
      faults.add(phrases.of("misread." + what, shortened(text.strip()), "", ""));
    }

    private List<String> shown() {
      if (faults.size() <= MOST_FAULTS) {
        return List.copyOf(faults);
      }
      List<String> shown = new ArrayList<>(faults.subList(0, MOST_FAULTS));
      shown.add(phrases.of("spot.faults.more", faults.size() - MOST_FAULTS));
      return shown;
    }

    private static String shortened(String text) {
      return text.length() <= ECHO ? text : text.substring(0, ECHO) + "…";
    }
  }
}
