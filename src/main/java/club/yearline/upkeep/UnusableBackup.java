package club.yearline.upkeep;

import java.io.IOException;
import java.util.List;

/** A backup that cannot be used, or not here, and why. */
public final class UnusableBackup extends IOException {

  private static final long serialVersionUID = 1L;

  private final String code;
  private final transient List<Object> arguments;

  UnusableBackup(String code, Object... arguments) {
    super(code + " " + List.of(arguments));
    this.code = code;
    this.arguments = List.of(arguments);
  }

  /** The word by which messages tell reasons apart. */
  public String code() {
    return code;
  }

  /** What the message names. */
  public Object[] arguments() {
    return arguments.toArray();
  }
}
