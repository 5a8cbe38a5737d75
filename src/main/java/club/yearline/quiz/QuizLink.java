package club.yearline.quiz;

import java.time.LocalDate;

/**
 * A link by which a class takes a quiz.
 *
 * @param id its number
 * @param person who made it
 * @param given what the quiz is made of
 * @param revision the revision it is made from
 * @param lastDay the last day on which it works, by universal time
 */
public record QuizLink(long id, long person, Given given, int revision, LocalDate lastDay) {

  /** Whether its last day has passed. */
  boolean isOver(LocalDate today) {
    return today.isAfter(lastDay);
  }

  /** What it is called in lists: the number of the quiz. */
  public String number() {
    return given.number();
  }

  /** The key of the family. */
  public String family() {
    return given.family();
  }

  /** How many questions were asked for. */
  public String count() {
    return given.count();
  }
}
