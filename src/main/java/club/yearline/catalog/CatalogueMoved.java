package club.yearline.catalog;

/** Something was published after the state for which an edition was made. */
public final class CatalogueMoved extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final int newest;

  CatalogueMoved(int expected, int newest) {
    super("The newest revision is " + newest + ", not " + expected);
    this.newest = newest;
  }

  /** Number of the newest revision. */
  public int newest() {
    return newest;
  }
}
