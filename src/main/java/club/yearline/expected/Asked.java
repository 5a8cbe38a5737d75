package club.yearline.expected;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Question;
import club.yearline.effectivity.Variant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The form as it was sent: every field as typed. */
public record Asked(@Nullable String serial, @Nullable String variant, @Nullable String year) {

  private static final int MOST_YEAR_DIGITS = 4;

  /** Whether the page was opened without a question. */
  public boolean isFresh() {
    return serial == null && variant == null && year == null;
  }

  /** Whether a year was typed that is no year. */
  public boolean yearIsUnreadable() {
    String typed = clean(year);
    return typed != null
        && (typed.length() > MOST_YEAR_DIGITS
            || !typed.chars().allMatch(c -> c >= '0' && c <= '9'));
  }

  /** The question; a year that cannot be read is left out. */
  public Question question(Catalogue catalogue) {
    String typedYear = yearIsUnreadable() ? null : clean(year);
    return new Question(
        variantKey(catalogue, clean(variant)),
        typedYear == null ? null : Integer.valueOf(typedYear),
        clean(serial));
  }

  /** A variant may be given by its key or, where only one has it, by its designation. */
  static @Nullable String variantKey(Catalogue catalogue, @Nullable String typed) {
    if (typed == null || catalogue.variant(typed).isPresent()) {
      return typed;
    }
    List<Variant> named =
        catalogue.records().variants().stream()
            .filter(v -> v.designation().equalsIgnoreCase(typed))
            .toList();
    return named.size() == 1 ? named.get(0).key() : typed;
  }

  private static @Nullable String clean(@Nullable String text) {
    return text == null || text.isBlank() ? null : text.strip();
  }
}
