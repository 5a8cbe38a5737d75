package club.yearline.catalog;

import java.util.List;
import org.springframework.stereotype.Component;

/** The published states of the catalogue. */
@Component
public class Snapshots {

  /** The newest state; revision 0 and an empty catalogue before anything is published. */
  public Snapshot head() {
    return Snapshot.NONE;
  }

  /**
   * The state at a revision.
   *
   * @throws UnknownRevision if there is no such revision
   */
  public Snapshot at(int revision) {
    throw new UnsupportedOperationException("storage follows");
  }

  /** All revisions, newest first. */
  public List<Revision> revisions() {
    return List.of();
  }
}
