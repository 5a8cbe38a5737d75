package club.yearline.effectivity;

/** One state of a catalogue, compiled for questions. Immutable. */
public final class Catalogue {

  private final Records records;

  private Catalogue(Records records) {
    this.records = records;
  }

  /** Compiles records that have no error among their {@link Findings}. */
  public static Catalogue of(Records records) {
    return new Catalogue(records);
  }

  /** The entries as recorded. */
  public Records records() {
    return records;
  }
}
