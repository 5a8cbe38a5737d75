package club.yearline.news;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.EntryKind;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * Something that can be watched.
 *
 * @param kind what it is
 * @param key its key in the catalogue
 */
record Watched(Kind kind, String key) {

  /** What can be watched. */
  enum Kind {
    FAMILY(EntryKind.FAMILY),
    VARIANT(EntryKind.VARIANT),
    FEATURE(EntryKind.FEATURE);

    private final EntryKind entry;

    Kind(EntryKind entry) {
      this.entry = entry;
    }

    /** The word used in forms. */
    String code() {
      return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Kind> of(String code) {
      return Arrays.stream(values()).filter(kind -> kind.code().equals(code)).findFirst();
    }
  }

  /** Reads what {@link #toString} wrote. */
  static Optional<Watched> parse(String text) {
    int space = text.indexOf(' ');
    return space < 0
        ? Optional.empty()
        : Kind.of(text.substring(0, space)).map(k -> new Watched(k, text.substring(space + 1)));
  }

  static Watched family(String key) {
    return new Watched(Kind.FAMILY, key);
  }

  static Watched variant(String key) {
    return new Watched(Kind.VARIANT, key);
  }

  static Watched feature(String key) {
    return new Watched(Kind.FEATURE, key);
  }

  /** The name that the catalogue has for it; its key where it was withdrawn. */
  String name(Catalogue catalogue) {
    return named(catalogue).orElse(key);
  }

  boolean isIn(Catalogue catalogue) {
    return named(catalogue).isPresent();
  }

  private Optional<String> named(Catalogue catalogue) {
    return switch (kind) {
      case FAMILY -> catalogue.family(key).map(family -> family.name());
      case VARIANT -> catalogue.variant(key).map(variant -> variant.designation());
      case FEATURE -> catalogue.feature(key).map(feature -> feature.name());
    };
  }

  /** Its page. */
  String path() {
    return "/" + kind.entry.resource() + "/" + key;
  }

  /** As stored: {@code family turnstone}. */
  @Override
  public String toString() {
    return kind.entry.code() + " " + key;
  }
}
