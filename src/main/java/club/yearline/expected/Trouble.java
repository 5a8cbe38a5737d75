package club.yearline.expected;

import java.util.List;

/**
 * Why a question has no answer, and what to do.
 *
 * @param status the HTTP status
 * @param field the form's field to look at
 * @param title what is wrong, in one line
 * @param advice what to do
 * @param ways answers that may be meant
 */
public record Trouble(int status, String field, String title, String advice, List<Way> ways) {

  /** The same trouble in a form that has the fields twice: {@code year} becomes {@code toYear}. */
  Trouble in(String side) {
    String own = side + Character.toUpperCase(field.charAt(0)) + field.substring(1);
    return new Trouble(status, own, title, advice, ways);
  }

  /** A link to an answer that may be meant. */
  public record Way(String text, String href) {}
}
