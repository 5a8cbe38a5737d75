package club.yearline.expected;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Question;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import org.springframework.web.util.UriUtils;

/**
 * One side of a comparison as typed.
 *
 * @param variant key or designation of the variant
 * @param year the year
 */
record VariantYear(String variant, String year) {

  /** Reads {@code VARIANT:YEAR}, or the two fields of the form; null where nothing was given. */
  static @Nullable VariantYear of(
      @Nullable String both, @Nullable String variant, @Nullable String year) {
    if (both != null) {
      int colon = both.lastIndexOf(':');
      return colon < 0
          ? new VariantYear(both.strip(), "")
          : new VariantYear(both.substring(0, colon).strip(), both.substring(colon + 1).strip());
    }
    return variant == null && year == null ? null : new VariantYear(text(variant), text(year));
  }

  /** The same side as an empty form shows it. */
  static VariantYear orEmpty(@Nullable VariantYear side) {
    return side == null ? new VariantYear("", "") : side;
  }

  Asked asked() {
    return new Asked(null, variant, year);
  }

  Question question(Catalogue catalogue) {
    return asked().question(catalogue);
  }

  /** The same side with the variant's key, where its designation was typed. */
  VariantYear known(Catalogue catalogue) {
    String key = Asked.variantKey(catalogue, variant);
    return new VariantYear(key == null ? "" : key, year);
  }

  /** As it stands in an address. */
  String inAddress() {
    return encoded(variant) + ":" + encoded(year);
  }

  private static String encoded(String text) {
    return UriUtils.encode(text, StandardCharsets.UTF_8);
  }

  private static String text(@Nullable String typed) {
    return typed == null ? "" : typed.strip();
  }
}
