package club.yearline.inspection;

import java.util.Locale;

/** What all findings together say of a claim. */
public enum Verdict {
  /** No observation decides anything. */
  TOO_LITTLE,
  /** Nothing differs. */
  CONSISTENT,
  /** Something differs, and exchanged parts explain it as well as another identity would. */
  EXCHANGED_PARTS,
  /** Something differs, and another variant and year explains what was seen far better. */
  CHECK_IDENTITY;

  private final String code = name().toLowerCase(Locale.ROOT).replace('_', '-');

  /** The word used in the API. */
  public String code() {
    return code;
  }
}
