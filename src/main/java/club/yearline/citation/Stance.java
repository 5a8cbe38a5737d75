package club.yearline.citation;

/** Whether a citation speaks for the record that cites it, or against it. */
public enum Stance {
  SUPPORTS,
  DISPUTES;

  private final String code = name().toLowerCase(java.util.Locale.ROOT);

  /** The word used in files, addresses and the API. */
  public String code() {
    return code;
  }
}
