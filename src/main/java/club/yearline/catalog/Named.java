package club.yearline.catalog;

import java.util.List;

/**
 * Something that can be found by words.
 *
 * @param meaning what it is
 * @param name the name by which it is found
 * @param context words that narrow the search but do not find it by themselves: a value's feature
 */
record Named(Meaning meaning, String name, String context) {

  static Named of(Meaning meaning, String name) {
    return new Named(meaning, name, "");
  }

  /** The whole name, run together. */
  String joined() {
    return Words.joined(Words.of(name));
  }

  /** The words of the name as they are looked up. */
  List<String> words() {
    return Vocabulary.lookedUp(name);
  }

  /** The words of the name and of its context. */
  List<String> allWords() {
    return Vocabulary.lookedUp(name + " " + context);
  }
}
