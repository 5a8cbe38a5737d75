package club.yearline.catalog;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import org.apache.commons.text.similarity.DamerauLevenshteinDistance;

/**
 * The distinct words by which things can be found. Work is bounded by the number of words, never by
 * the number of records, and a word is compared for slips only with words of nearly its length.
 */
final class Vocabulary {

  /** More words than these that begin alike say nothing about what is meant. */
  private static final int MOST_BEGINNINGS = 500;

  private static final int SHORTEST_WITH_SLIP = 3;
  private static final int SHORTEST_WITH_TWO = 8;

  private final List<Named> named;
  private final Map<String, BitSet> whole = new HashMap<>();
  private final TreeMap<String, Use> words = new TreeMap<>();
  private final Map<Integer, List<String>> byLength = new HashMap<>();

  Vocabulary(List<Named> named) {
    this.named = List.copyOf(named);
    for (int i = 0; i < named.size(); i++) {
      int at = i;
      whole.computeIfAbsent(named.get(i).joined(), k -> new BitSet()).set(at);
      named.get(i).words().forEach(word -> use(word).own.set(at));
      named.get(i).allWords().forEach(word -> use(word).all.set(at));
    }
    words
        .keySet()
        .forEach(w -> byLength.computeIfAbsent(w.length(), k -> new ArrayList<>()).add(w));
  }

  private Use use(String word) {
    return words.computeIfAbsent(word, k -> new Use());
  }

  /** Which names have a word: in themselves, or in their context too. */
  private record Use(BitSet own, BitSet all) {

    Use() {
      this(new BitSet(), new BitSet());
    }

    void add(Use other) {
      own.or(other.own);
      all.or(other.all);
    }
  }

  /**
   * The words under which a name is looked up: each whole, each part of it, and each with its
   * neighbour, so that {@code wingtip} finds {@code wing tip}.
   */
  static List<String> lookedUp(String name) {
    List<String> words = Words.of(name);
    Set<String> all = new LinkedHashSet<>();
    for (int i = 0; i < words.size(); i++) {
      all.add(Words.squash(words.get(i)));
      all.addAll(Words.parts(words.get(i)));
      if (i > 0) {
        all.add(Words.squash(words.get(i - 1) + words.get(i)));
      }
    }
    return List.copyOf(all);
  }

  /** What has this whole name. */
  List<Named> named(String joined) {
    return list(whole.getOrDefault(joined, new BitSet()));
  }

  /** What has all the words, and how well; the closest kind of match that finds anything. */
  Matches search(List<String> typed) {
    List<String> terms = typed.stream().map(Words::squash).toList();
    for (Closeness closeness : List.of(Closeness.WORDS, Closeness.BEGINNING)) {
      BitSet both = intersect(terms.stream().map(t -> fitting(t, closeness)).toList());
      if (!both.isEmpty()) {
        return new Matches(list(both), closeness, List.of());
      }
    }
    List<String> unread = new ArrayList<>();
    List<Use> uses = new ArrayList<>();
    for (int i = 0; i < terms.size(); i++) {
      Use use = fitting(terms.get(i), Closeness.NEAR);
      if (use.all.isEmpty()) {
        unread.add(typed.get(i));
      } else {
        uses.add(use);
      }
    }
    return new Matches(list(intersect(uses)), Closeness.NEAR, List.copyOf(unread));
  }

  /**
   * What a search found.
   *
   * @param named what has the words
   * @param closeness how well
   * @param unread words that resemble none of the vocabulary, left aside
   */
  record Matches(List<Named> named, Closeness closeness, List<String> unread) {}

  private static BitSet intersect(List<Use> uses) {
    if (uses.isEmpty()) {
      return new BitSet();
    }
    BitSet all = (BitSet) uses.get(0).all.clone();
    BitSet own = new BitSet();
    for (Use use : uses) {
      all.and(use.all);
      own.or(use.own);
    }
    all.and(own);
    return all;
  }

  private Use fitting(String term, Closeness closeness) {
    Use found = new Use();
    Use exact = words.get(term);
    if (exact != null) {
      found.add(exact);
    }
    if (closeness != Closeness.WORDS) {
      words.subMap(term, term + Character.MAX_VALUE).values().stream()
          .limit(MOST_BEGINNINGS)
          .forEach(found::add);
    }
    if (closeness == Closeness.NEAR) {
      nearby(term, (word, use) -> found.add(use));
    }
    return found;
  }

  private void nearby(String term, BiConsumer<String, Use> found) {
    int slips = slips(term);
    if (slips == 0) {
      return;
    }
    var distance = new DamerauLevenshteinDistance(slips);
    for (int length = term.length() - slips; length <= term.length() + slips; length++) {
      for (String word : byLength.getOrDefault(length, List.of())) {
        Use use = words.get(word);
        if (use != null && distance.apply(term, word) >= 0) {
          found.accept(word, use);
        }
      }
    }
  }

  /** How many slips of the pen a word of this length may have. */
  private static int slips(String term) {
    if (term.length() < SHORTEST_WITH_SLIP) {
      return 0;
    }
    return term.length() < SHORTEST_WITH_TWO ? 1 : 2;
  }

  private List<Named> list(BitSet which) {
    return Arrays.stream(which.stream().toArray()).mapToObj(named::get).toList();
  }
}
