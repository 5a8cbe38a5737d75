package club.yearline.citing;

import club.yearline.catalog.Reading;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Question;
import club.yearline.effectivity.Variant;
import club.yearline.web.Phrases;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * Says what pages are called in a bibliography. Titles come from the records, never from the
 * address: nobody can have a page cited under words of their own.
 */
@Component
class PageTitles {

  private static final Set<String> PLACES =
      Set.of("families", "sources", "revisions", "compare", "spot", "inspect", "ground-school");

  private final Phrases phrases;

  PageTitles(Phrases phrases) {
    this.phrases = phrases;
  }

  /** What the page is called; empty where it is none that can be cited, or not at the reading. */
  Optional<String> title(PageAddress page, Reading reading) {
    List<String> steps = page.steps();
    if (steps.isEmpty()) {
      return Optional.of(phrases.of("citing.place.home"));
    }
    String place = steps.get(0);
    return switch (steps.size()) {
      case 1 -> ofPlace(place, page, reading.catalogue());
      case 2 -> ofEntry(place, steps.get(1), page, reading);
      default -> Optional.empty();
    };
  }

  private Optional<String> ofPlace(String place, PageAddress page, Catalogue catalogue) {
    if (place.equals("expected")) {
      return ofExpected(page, catalogue);
    }
    if (place.equals("differences")) {
      return ofDifferences(page, catalogue);
    }
    return PLACES.contains(place)
        ? Optional.of(phrases.of("citing.place." + place))
        : Optional.empty();
  }

  private Optional<String> ofEntry(String place, String key, PageAddress page, Reading reading) {
    Catalogue catalogue = reading.catalogue();
    Optional<String> name =
        switch (place) {
          case "families" -> catalogue.family(key).map(Family::name);
          case "variants" -> catalogue.variant(key).map(v -> ofVariant(v, catalogue));
          case "features" -> catalogue.feature(key).map(Feature::name);
          case "changes" -> catalogue.change(key).map(c -> ofChange(c, catalogue));
          case "sources" -> catalogue.source(key).map(s -> s.source().title());
          case "revisions" -> ofRevision(key, page, reading.revision());
          default -> Optional.empty();
        };
    return name.map(n -> phrases.of("citing.entry." + place, n));
  }

  private static String ofVariant(Variant variant, Catalogue catalogue) {
    return catalogue
        .family(variant.family())
        .map(f -> variant.designation() + " (" + f.name() + ")")
        .orElse(variant.designation());
  }

  private static String ofChange(Change change, Catalogue catalogue) {
    return catalogue
        .feature(change.feature())
        .map(f -> f.name() + ": " + change.title())
        .orElse(change.title());
  }

  /** One revision, or two compared; later ones than the one read are not known to it. */
  private static Optional<String> ofRevision(String key, PageAddress page, int highest) {
    if (!key.equals("compare")) {
      return number(key).filter(n -> n >= 1 && n <= highest).map(Object::toString);
    }
    return number(page.given("from"))
        .flatMap(from -> number(page.given("to")).map(to -> from + "–" + to));
  }

  private static Optional<Integer> number(@Nullable String text) {
    return text != null && text.matches("[0-9]{1,9}")
        ? Optional.of(Integer.valueOf(text))
        : Optional.empty();
  }

  private Optional<String> ofExpected(PageAddress page, Catalogue catalogue) {
    String serial = page.given("serial");
    String variant = page.given("variant");
    String year = page.given("year");
    if (serial == null && variant == null && year == null) {
      return Optional.of(phrases.of("citing.place.expected"));
    }
    return position(catalogue, variant, year, serial)
        .map(p -> phrases.of("citing.expected", heading(p)));
  }

  private Optional<String> ofDifferences(PageAddress page, Catalogue catalogue) {
    String from = page.given("from");
    String to = page.given("to");
    if (from == null && to == null) {
      return Optional.of(phrases.of("citing.place.differences"));
    }
    return side(from, catalogue)
        .flatMap(a -> side(to, catalogue).map(b -> phrases.of("citing.differences", a, b)));
  }

  private static Optional<String> side(@Nullable String text, Catalogue catalogue) {
    int colon = text == null ? -1 : text.lastIndexOf(':');
    return text == null || colon < 0
        ? Optional.empty()
        : position(catalogue, text.substring(0, colon), text.substring(colon + 1), null)
            .map(PageTitles::heading);
  }

  private static Optional<Position> position(
      Catalogue catalogue,
      @Nullable String variant,
      @Nullable String year,
      @Nullable String serial) {
    Integer number = number(blankless(year)).orElse(null);
    Question question = new Question(key(catalogue, blankless(variant)), number, blankless(serial));
    return catalogue.locate(question) instanceof Located.Found found
        ? Optional.of(found.position())
        : Optional.empty();
  }

  private static @Nullable String blankless(@Nullable String text) {
    return text == null || text.isBlank() ? null : text.strip();
  }

  /** A variant is asked for by its key or, where only one has it, by its designation. */
  private static @Nullable String key(Catalogue catalogue, @Nullable String variant) {
    if (variant == null || catalogue.variant(variant).isPresent()) {
      return variant;
    }
    List<Variant> named =
        catalogue.records().variants().stream()
            .filter(v -> v.designation().equalsIgnoreCase(variant))
            .toList();
    return named.size() == 1 ? named.get(0).key() : variant;
  }

  private static String heading(Position position) {
    Integer year = position.year();
    return Stream.of(
            position.serialText(),
            position.variant().designation(),
            year == null ? null : year.toString())
        .filter(Objects::nonNull)
        .collect(Collectors.joining(", "));
  }
}
