package club.yearline.compare;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Variant;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.springframework.web.util.UriUtils;

/**
 * A variant-year as typed.
 *
 * @param variant key or designation
 * @param year the year
 */
public record Chosen(String variant, String year) {

  static final Chosen EMPTY = new Chosen("", "");

  private static final int MOST_YEAR_DIGITS = 4;

  /** Reads {@code VARIANT:YEAR}. */
  static Chosen of(String both) {
    int colon = both.lastIndexOf(':');
    return colon < 0
        ? new Chosen(both.strip(), "")
        : new Chosen(both.substring(0, colon).strip(), both.substring(colon + 1).strip());
  }

  boolean isEmpty() {
    return variant.isEmpty() && year.isEmpty();
  }

  boolean hasReadableYear() {
    return !year.isEmpty()
        && year.length() <= MOST_YEAR_DIGITS
        && year.chars().allMatch(c -> c >= '0' && c <= '9');
  }

  /** The same with the variant's key where its designation was typed and only one has it. */
  Chosen known(Catalogue catalogue) {
    if (catalogue.variant(variant).isPresent()) {
      return this;
    }
    List<Variant> named =
        catalogue.records().variants().stream()
            .filter(v -> v.designation().equalsIgnoreCase(variant))
            .toList();
    return named.size() == 1 ? new Chosen(named.get(0).key(), year) : this;
  }

  /** As it stands in an address. */
  String inAddress() {
    return UriUtils.encode(variant, StandardCharsets.UTF_8)
        + ":"
        + UriUtils.encode(year, StandardCharsets.UTF_8);
  }
}
