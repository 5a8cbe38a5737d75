package club.yearline.effectivity;

/** The kinds of catalogue entries that have an identity and versions. */
public enum EntryKind {
  FAMILY("families"),
  VARIANT("variants"),
  SERIES("series"),
  SERIAL_BLOCK("serial-blocks"),
  FEATURE("features"),
  CHANGE("changes"),
  RETROFIT("retrofits"),
  SOURCE("sources");

  private final String resource;
  private final String code = Codes.of(this);

  EntryKind(String resource) {
    this.resource = resource;
  }

  /** The word for one entry of this kind, as in citations. */
  public String code() {
    return code;
  }

  /** The name of this kind's table in a data package. */
  public String resource() {
    return resource;
  }
}
