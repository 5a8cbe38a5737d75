package club.yearline.quiz;

import java.util.List;

/**
 * What a quiz is to be made of.
 *
 * @param family key of the family
 * @param variants keys of its variants; none for all
 * @param features keys of features; none, and no chapter, for all
 * @param chapters chapters whose features count as well
 * @param kinds kinds of question; none for all
 * @param count how many questions
 * @param number the number that makes the same quiz again
 */
record Selection(
    String family,
    List<String> variants,
    List<String> features,
    List<String> chapters,
    List<Kind> kinds,
    int count,
    long number) {

  static final int MOST_QUESTIONS = 40;
  static final long HIGHEST_NUMBER = 999_999_999L;

  Selection {
    variants = variants.stream().distinct().sorted().toList();
    features = features.stream().distinct().sorted().toList();
    chapters = chapters.stream().distinct().sorted().toList();
    kinds = kinds.stream().distinct().sorted().toList();
  }

  /** The kinds meant. */
  List<Kind> meant() {
    return kinds.isEmpty() ? List.of(Kind.values()) : kinds;
  }
}
