package club.yearline.tables;

import java.util.List;

/**
 * What is wrong with a cell: a code, and what its text names.
 *
 * @param code names the text in the message bundle
 * @param arguments what the text names, in its order
 */
public record Complaint(String code, List<String> arguments) {

  /** A complaint whose text names these things. */
  public static Complaint of(String code, Object... arguments) {
    return new Complaint(code, List.of(arguments).stream().map(String::valueOf).toList());
  }
}
