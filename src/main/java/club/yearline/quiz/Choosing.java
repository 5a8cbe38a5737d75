package club.yearline.quiz;

import club.yearline.catalog.Reading;
import club.yearline.effectivity.Catalogue;
import club.yearline.web.Phrases;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Holds what was typed against the catalogue: a selection, or what is wrong, by field. */
final class Choosing {

  /** More would be no address. */
  static final int MOST_KEYS = 60;

  private static final int ECHO = 60;

  private final Given given;
  private final Catalogue catalogue;
  private final int revision;
  private final Phrases phrases;
  private final Map<String, String> faults = new LinkedHashMap<>();

  Choosing(Given given, Reading reading, Phrases phrases) {
    this.given = given;
    this.catalogue = reading.catalogue();
    this.revision = reading.revision();
    this.phrases = phrases;
  }

  /** What is wrong, by field; empty where a quiz can be made. */
  Map<String, String> faults() {
    return faults;
  }

  /** The selection; empty where something is wrong. A number that is not given counts as 0. */
  Optional<Selection> selection() {
    if (catalogue.family(given.family()).isEmpty()) {
      fault("family", "unknown-family", revision, shown(given.family()));
    }
    known("v", given.variants(), this::isOfFamily, "unknown-variant");
    known("f", given.features(), f -> catalogue.feature(f).isPresent(), "unknown-feature");
    known("ch", given.chapters(), this::isChapter, "unknown-chapter");
    known("kind", given.kinds(), k -> Kind.of(k).isPresent(), "unknown-kind");
    long count = whole("count", given.count(), 1, Selection.MOST_QUESTIONS);
    long number =
        given.number().isEmpty() ? 0 : whole("number", given.number(), 0, Selection.HIGHEST_NUMBER);
    return faults.isEmpty()
        ? Optional.of(
            new Selection(
                given.family(),
                given.variants(),
                given.features(),
                given.chapters(),
                given.kinds().stream().flatMap(k -> Kind.of(k).stream()).toList(),
                (int) count,
                number))
        : Optional.empty();
  }

  private boolean isOfFamily(String key) {
    return catalogue.variant(key).filter(v -> v.family().equals(given.family())).isPresent();
  }

  private boolean isChapter(String code) {
    return catalogue.records().features().stream().anyMatch(f -> f.chapter().equals(code));
  }

  private void known(String field, List<String> keys, Predicate<String> known, String fault) {
    if (keys.size() > MOST_KEYS) {
      fault(field, "too-many", keys.size(), MOST_KEYS);
      return;
    }
    keys.stream()
        .filter(known.negate())
        .findFirst()
        .ifPresent(key -> fault(field, fault, revision, shown(key)));
  }

  private long whole(String field, String typed, long least, long most) {
    boolean fits = typed.matches("[0-9]{1,9}");
    long number = fits ? Long.parseLong(typed) : -1;
    if (number < least || number > most) {
      fault(field, "no-number", shown(typed), least, most);
    }
    return number;
  }

  private static String shown(String typed) {
    return typed.length() <= ECHO ? typed : typed.substring(0, ECHO) + "…";
  }

  /** The first fault of a field is told. */
  private void fault(String field, String key, @Nullable Object... arguments) {
    faults.putIfAbsent(field, Objects.requireNonNull(phrases.of("quiz.fault." + key, arguments)));
  }
}
