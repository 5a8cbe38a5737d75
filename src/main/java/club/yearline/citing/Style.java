package club.yearline.citing;

/** A published style of citing, in the version that comes with the library of styles. */
public enum Style {
  ISO_690("iso690-author-date-en"),
  CHICAGO("chicago-author-date"),
  APA("apa");

  private final String file;
  private final String code = name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');

  Style(String file) {
    this.file = file;
  }

  /** The word used in messages and ids. */
  public String code() {
    return code;
  }

  String file() {
    return file;
  }
}
