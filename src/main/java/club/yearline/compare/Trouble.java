package club.yearline.compare;

import java.util.List;

/**
 * Why something chosen cannot be compared, and what to do.
 *
 * @param status the HTTP status
 * @param title what is wrong, in one line
 * @param advice what to do
 * @param ways answers that may be meant
 */
public record Trouble(int status, String title, String advice, List<Way> ways) {

  /** A link to an answer that may be meant. */
  public record Way(String text, String href) {}
}
