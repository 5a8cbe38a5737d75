package club.yearline.print;

/** The sheets that are printed on. */
public enum Paper {
  A4("a4"),
  LETTER("letter"),
  /** For one large drawing. */
  A3("a3 landscape");

  private final String size;

  Paper(String size) {
    this.size = size;
  }

  /** The size as style sheets call it. */
  String size() {
    return size;
  }

  /** The paper that a text names; A4 for none or another. */
  public static Paper of(String text) {
    return text.equalsIgnoreCase(LETTER.name()) ? LETTER : A4;
  }
}
