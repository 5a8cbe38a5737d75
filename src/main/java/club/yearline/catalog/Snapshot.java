package club.yearline.catalog;

import club.yearline.effectivity.Catalogue;

/** The whole catalogue as one revision has it. Immutable. */
public record Snapshot(Revision revision, Catalogue catalogue) {

  /** Before anything is published. */
  static final Snapshot NONE = new Snapshot(Revision.NONE, Catalogue.EMPTY);

  /** The number of its revision. */
  public int number() {
    return revision.number();
  }
}
