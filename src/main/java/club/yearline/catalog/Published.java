package club.yearline.catalog;

import club.yearline.effectivity.Catalogue;
import java.util.List;

/**
 * A revision is being published; told inside the transaction that publishes it, so that what a
 * listener stores is stored with it or not at all.
 *
 * @param snapshot the catalogue as the revision has it
 * @param before the catalogue as it was
 * @param edits what the revision does to entries, in no particular order
 */
public record Published(Snapshot snapshot, Catalogue before, List<EntryEdit> edits) {

  public Published {
    edits = List.copyOf(edits);
  }
}
