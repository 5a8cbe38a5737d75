package club.yearline.citation;

import org.jspecify.annotations.Nullable;

/**
 * A pointer from a record into a source.
 *
 * @param key stable key of the citation
 * @param variant for a change: only the cut-in of this variant; null for the whole record
 * @param source key of the source
 * @param locator page, paragraph or figure
 * @param stance whether the source speaks for or against the record
 * @param note plain text
 */
public record Citation(
    String key,
    @Nullable String variant,
    String source,
    @Nullable String locator,
    Stance stance,
    @Nullable String note) {

  /** Whether the source speaks for the record. */
  public boolean supports() {
    return stance == Stance.SUPPORTS;
  }

  /** Whether this citation bears on what is said of the given variant. */
  public boolean bearsOn(String variantKey) {
    return variant == null || variant.equals(variantKey);
  }
}
