package club.yearline.groundschool;

import club.yearline.catalog.Reading;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Variant;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Holds a choice against the catalogue: what it names, or what is wrong with it, by field. */
final class Choosing {

  /** More would no longer be a hand-out, and no address. */
  static final int MOST_FEATURES = 24;

  static final int MOST_VARIANTS = 40;
  static final int LONGEST_TITLE = 120;
  static final int LONGEST_REMARKS = 2000;

  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 2200;

  private final Handout handout;
  private final Reading reading;
  private final Catalogue catalogue;
  private final Phrases phrases;
  private final Map<String, String> faults = new LinkedHashMap<>();

  Choosing(Handout handout, Reading reading, Phrases phrases) {
    this.handout = handout;
    this.reading = reading;
    this.catalogue = reading.catalogue();
    this.phrases = phrases;
  }

  /** What is wrong, by field; empty where a hand-out can be made. */
  Map<String, String> faults() {
    return faults;
  }

  /** What the choice names; empty where something is wrong with it. */
  Optional<Chosen> chosen() {
    List<Feature> features = features();
    List<Variant> variants = variants(features);
    int first = year("from", handout.from(), FIRST_YEAR);
    int last = year("to", handout.to(), LAST_YEAR);
    if (first > last) {
      fault("from", "years-reversed");
    }
    checkLength("title", handout.title(), LONGEST_TITLE);
    checkLength("remarks", handout.remarks(), LONGEST_REMARKS);
    return faults.isEmpty()
        ? Optional.of(new Chosen(handout, features, variants, first, last))
        : Optional.empty();
  }

  private List<Feature> features() {
    if (handout.features().isEmpty()) {
      fault("f", "no-feature");
    }
    if (handout.features().size() > MOST_FEATURES) {
      fault("f", "too-many-features", handout.features().size(), MOST_FEATURES);
      return List.of();
    }
    List<Feature> features = new ArrayList<>();
    for (String key : handout.features()) {
      catalogue
          .feature(key)
          .ifPresentOrElse(
              features::add, () -> fault("f", "unknown-feature", reading.revision(), shown(key)));
    }
    return features;
  }

  private List<Variant> variants(List<Feature> features) {
    if (handout.variants().size() > MOST_VARIANTS) {
      fault("v", "too-many-variants", handout.variants().size(), MOST_VARIANTS);
      return List.of();
    }
    if (handout.variants().isEmpty()) {
      return inOrder(catalogue.records().variants()).stream()
          .filter(v -> features.stream().anyMatch(f -> has(v, f)))
          .limit(MOST_VARIANTS)
          .toList();
    }
    List<Variant> variants = new ArrayList<>();
    for (String key : handout.variants()) {
      catalogue
          .variant(key)
          .ifPresentOrElse(
              variants::add, () -> fault("v", "unknown-variant", reading.revision(), shown(key)));
    }
    return inOrder(variants);
  }

  private boolean has(Variant variant, Feature feature) {
    return catalogue.model(variant.key()).flatMap(m -> m.timeline(feature.key())).isPresent();
  }

  /** By family, in the order that the family's own page has. */
  private List<Variant> inOrder(List<Variant> variants) {
    return catalogue.records().families().stream()
        .sorted(Comparator.comparing(Family::name).thenComparing(Family::key))
        .flatMap(family -> catalogue.variantsOf(family.key()).stream())
        .filter(variants::contains)
        .toList();
  }

  private int year(String field, String typed, int otherwise) {
    if (typed.isEmpty()) {
      return otherwise;
    }
    if (!typed.matches("[0-9]{4}")) {
      fault(field, "no-year", shown(typed));
      return otherwise;
    }
    return Integer.parseInt(typed);
  }

  private void checkLength(String field, String text, int longest) {
    if (text.length() > longest) {
      fault(field, "too-long", text.length(), longest);
    }
  }

  private static String shown(String typed) {
    return typed.length() <= 60 ? typed : typed.substring(0, 60) + "…";
  }

  /** The first fault of a field is told. */
  private void fault(String field, String key, @Nullable Object... arguments) {
    faults.putIfAbsent(field, phrases.of("school.fault." + key, arguments));
  }
}
