package club.yearline.inspection;

import java.util.Locale;

/** How an observation stands to what is expected (domain: "finding"). */
public enum Match {
  /** Standard in every possible offering. */
  AS_BUILT,
  /** In every possible offering, at least once as an option. */
  AS_BUILT_OPTION,
  /** In some possible offerings only. */
  EITHER,
  /** In none, but recorded as a retrofit for the position. */
  RETROFIT,
  /** In none, and nothing recorded is possible, or the feature is none of the variant's. */
  NOT_RECORDED,
  /** None of these. */
  DIFFERS;

  private final String code = name().toLowerCase(Locale.ROOT).replace('_', '-');

  /** The word used in addresses and the API. */
  public String code() {
    return code;
  }

  /** Whether an airframe whose records are in order may well have left the factory so. */
  public boolean isExpected() {
    return this == AS_BUILT || this == AS_BUILT_OPTION || this == EITHER;
  }

  /** Whether the logbooks must tell how the part came to be there. */
  public boolean asksLogbooks() {
    return this == RETROFIT || this == DIFFERS;
  }
}
