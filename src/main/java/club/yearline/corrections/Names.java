package club.yearline.corrections;

import club.yearline.catalog.EntryRef;
import club.yearline.tables.Sheet;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What entries are called, and the short names made of that. */
final class Names {

  private static final List<String> NAMING =
      List.of("designation", "name", "title", "document", "first_serial", "prefix", "label");

  private static final int LONGEST_KEY = 60;

  private Names() {}

  /** What an entry is called; its key where nothing else names it. */
  static String of(EntryRef ref, @Nullable Sheet sheet) {
    if (sheet != null) {
      for (String column : NAMING) {
        if (!sheet.cell(column).isEmpty()) {
          return sheet.cell(column);
        }
      }
    }
    return ref.key();
  }

  /** A key made of a name: its letters and digits, the rest as hyphens. */
  static String keyOf(String name) {
    String plain = Normalizer.normalize(name, Normalizer.Form.NFKD).replaceAll("\\p{M}", "");
    String key =
        plain.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
    return key.substring(0, Math.min(key.length(), LONGEST_KEY)).replaceAll("-+$", "");
  }
}
