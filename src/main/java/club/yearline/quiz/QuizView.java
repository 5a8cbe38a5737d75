package club.yearline.quiz;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A quiz as its pages show it.
 *
 * @param title the family and how many questions
 * @param number its number
 * @param revision the revision it is made from
 * @param lines the questions
 * @param done whether the answers are in
 * @param right how many were answered rightly
 */
public record QuizView(
    String title, long number, int revision, List<Line> lines, boolean done, int right) {

  /**
   * One question.
   *
   * @param number its place, from 1
   * @param kind its kind in words
   * @param text what it asks
   * @param picture of the value it asks about; null where there is none
   * @param outcome {@code right}, {@code wrong} or {@code open} once the answers are in
   * @param solution the letter and words of the right option
   * @param proofs what the engine says
   * @param sources what that rests on
   */
  public record Line(
      int number,
      String kind,
      String text,
      @Nullable Shot picture,
      List<Option> options,
      String outcome,
      String solution,
      List<Proof> proofs,
      List<Proof> sources) {}

  /** An option. */
  public record Option(
      String letter, String text, @Nullable Shot picture, boolean chosen, boolean right) {}

  /** A picture; drawings in ink turn with the page. */
  public record Shot(String src, boolean ink) {}

  /** A line of a solution; href is null where the reader may not go there. */
  public record Proof(String text, @Nullable String href) {}
}
