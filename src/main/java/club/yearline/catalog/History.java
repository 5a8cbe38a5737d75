package club.yearline.catalog;

import club.yearline.effectivity.EntryKind;
import java.util.List;
import org.springframework.stereotype.Component;

/** What revisions did to entries. */
@Component
public class History {

  /** Every version of an entry, oldest first; empty where there never was such an entry. */
  public List<VersionSpan> of(EntryKind kind, String key) {
    throw new UnsupportedOperationException("storage follows");
  }

  /**
   * What a revision did, ordered by kind and key.
   *
   * @throws UnknownRevision if there is no such revision
   */
  public List<EntryEdit> edits(int revision) {
    throw new UnsupportedOperationException("storage follows");
  }
}
