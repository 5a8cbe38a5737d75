package club.yearline.browse;

import club.yearline.catalog.Wording;
import club.yearline.effectivity.Retrofit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Ranges of years and serials in words, open ends said as such. */
record Ranges(Wording wording, RecordTexts texts) {

  /** The airframes that a retrofit applies to. */
  String of(Retrofit retrofit) {
    String years = range(text(retrofit.firstYear()), text(retrofit.lastYear()));
    String serials = range(retrofit.firstSerial(), retrofit.lastSerial());
    String both =
        Stream.of(years, serials).filter(s -> !s.isEmpty()).collect(Collectors.joining(", "));
    return both.isEmpty() ? texts.get("range.all") : both;
  }

  /** From one to the other; empty where neither is known. */
  String range(@Nullable String first, @Nullable String last) {
    if (first == null) {
      return last == null ? "" : texts.get("range.to", last);
    }
    return last == null ? texts.get("range.from", first) : wording.range(first, last);
  }

  private static @Nullable String text(@Nullable Integer year) {
    return year == null ? null : year.toString();
  }
}
