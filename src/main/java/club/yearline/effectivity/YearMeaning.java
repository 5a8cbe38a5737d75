package club.yearline.effectivity;

/** What a year is in a family. */
public enum YearMeaning {
  /** The year the maker designated. */
  MODEL_YEAR,
  /** The calendar year in which an airframe was completed. */
  MANUFACTURE;

  private final String code = Codes.of(this);

  /** The word used in files, addresses and the API. */
  public String code() {
    return code;
  }
}
