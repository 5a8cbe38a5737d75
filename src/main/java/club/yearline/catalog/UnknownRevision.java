package club.yearline.catalog;

/** Somebody asked for a revision that was never published. */
public class UnknownRevision extends RuntimeException {

  private final int highest;

  UnknownRevision(int asked, int highest) {
    super("There is no revision " + asked + "; the highest is " + highest);
    this.highest = highest;
  }

  /** The highest revision there is; 0 where nothing is published. */
  public int highest() {
    return highest;
  }
}
