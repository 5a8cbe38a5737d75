package club.yearline.print;

import java.util.Locale;

/** The sheets that are printed on. */
public enum Paper {
  A4,
  LETTER;

  /** The size as style sheets call it. */
  String size() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The paper that a text names; A4 for none or another. */
  public static Paper of(String text) {
    return text.equalsIgnoreCase(LETTER.name()) ? LETTER : A4;
  }
}
