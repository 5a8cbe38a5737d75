package club.yearline.browse;

import club.yearline.effectivity.Change;
import club.yearline.effectivity.Offered;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Patterns and letters for the values of a feature, in the order in which they were offered. */
final class Fills {

  /** Patterns that the drawing's template defines; further values repeat them, told by letter. */
  static final int PATTERNS = 8;

  private final Map<String, Integer> places = new LinkedHashMap<>();

  Fills(List<Change> inOrder) {
    for (Change change : inOrder) {
      for (Offered offered : change.offering()) {
        places.putIfAbsent(offered.canonicalValue(), places.size());
      }
    }
  }

  /** The values, in order. */
  List<String> values() {
    return List.copyOf(places.keySet());
  }

  String pattern(String value) {
    return "p" + place(value) % PATTERNS;
  }

  /** A to Z, then A2 to Z2 and so on. */
  String letter(String value) {
    int place = place(value);
    String letter = String.valueOf((char) ('A' + place % 26));
    return place < 26 ? letter : letter + (place / 26 + 1);
  }

  boolean has(String value) {
    return places.containsKey(value);
  }

  private int place(String value) {
    Integer place = places.get(value);
    if (place == null) {
      throw new IllegalArgumentException("'" + value + "' was never offered");
    }
    return place;
  }
}
