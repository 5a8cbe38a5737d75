package club.yearline.corrections;

import club.yearline.effectivity.Records;
import java.util.HashSet;
import java.util.Set;

/** Makes keys for citations, which people need not think of. */
final class CitationKeys {

  /** Most characters of a key, less room for a number. */
  private static final int ROOM = 72;

  private CitationKeys() {}

  /** A key that is not taken; it is taken from then on. */
  static String free(String entry, String source, Set<String> taken) {
    String stem = cut(entry + "-" + source);
    String key = stem;
    for (int i = 2; !taken.add(key); i++) {
      key = stem + "-" + i;
    }
    return key;
  }

  /** The keys that are taken. */
  static Set<String> in(Records records) {
    Set<String> taken = new HashSet<>();
    records.entries().forEach(e -> e.citations().forEach(c -> taken.add(c.key())));
    return taken;
  }

  private static String cut(String stem) {
    String room = stem.substring(0, Math.min(stem.length(), ROOM));
    return room.replaceAll("-+$", "");
  }
}
