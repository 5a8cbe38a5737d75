package club.yearline.citation;

/** How good the best evidence for an answer is; declared from best to none. */
public enum Grade {
  /** Type certificate data sheet, manual, parts catalogue, bulletin or directive. */
  MAKER_OR_AUTHORITY("maker-or-authority"),
  /** Book, magazine, brochure or page. */
  PUBLISHED("published"),
  /** Photographs, logbooks, observations. */
  AIRFRAME("airframe"),
  /** A practitioner's memory, common practice. */
  RECOLLECTION("recollection"),
  /** No supporting source is recorded. */
  NONE("none");

  private final String code;

  Grade(String code) {
    this.code = code;
  }

  /** The word used in files, addresses and the API. */
  public String code() {
    return code;
  }

  /** The better of two grades. */
  public Grade orBetter(Grade other) {
    return compareTo(other) <= 0 ? this : other;
  }
}
