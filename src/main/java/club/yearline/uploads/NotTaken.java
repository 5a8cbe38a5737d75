package club.yearline.uploads;

import java.util.Arrays;
import java.util.List;

/** Bytes that are not taken, because they are of no kind that is, are broken, or could do harm. */
public final class NotTaken extends Exception {

  private static final long serialVersionUID = 1L;

  private final String code;
  private final List<String> arguments;

  NotTaken(String code, Object... arguments) {
    super(code);
    this.code = code;
    this.arguments = Arrays.stream(arguments).map(String::valueOf).toList();
  }

  /** Names the reason. */
  public String code() {
    return code;
  }

  /** What the text of the reason names, in its order. */
  public List<String> arguments() {
    return arguments;
  }
}
