package club.yearline.browse;

import club.yearline.catalog.EntryEdit;
import club.yearline.catalog.ImpactOf;
import club.yearline.catalog.Snapshots;
import club.yearline.catalog.UnknownRevision;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.ImpactRow;
import club.yearline.web.Refusal;
import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.List;
import org.springframework.stereotype.Component;

/**
 * Compares revisions; a few comparisons are kept, since a large one is costly and never changes.
 */
@Component
class Between {

  private static final int KEPT = 4;

  private final Snapshots snapshots;
  private final ImpactOf impacts;
  private final Cache<Pair, Comparison> kept = Caffeine.newBuilder().maximumSize(KEPT).build();

  Between(Snapshots snapshots, ImpactOf impacts) {
    this.snapshots = snapshots;
    this.impacts = impacts;
  }

  private record Pair(Catalogue before, Catalogue after) {}

  /**
   * What differs between two revisions.
   *
   * @param before the earlier catalogue
   * @param after the later catalogue
   * @param edits entries that read otherwise
   * @param impact answers that changed; not worked out where there was nothing before
   */
  record Comparison(
      Catalogue before, Catalogue after, List<EntryEdit> edits, List<ImpactRow> impact) {

    /** Whether nothing was published before, so that every answer is new. */
    boolean first() {
      return before.records().variants().isEmpty();
    }
  }

  /** Compares two revisions; 0 is the state before anything was published. */
  Comparison revisions(int from, int to) {
    return states(at(from), at(to));
  }

  /** Compares two states, published or not. */
  Comparison states(Catalogue before, Catalogue after) {
    return kept.get(new Pair(before, after), pair -> compare(before, after));
  }

  private Catalogue at(int revision) {
    try {
      return revision == 0 ? Catalogue.EMPTY : snapshots.at(revision).catalogue();
    } catch (UnknownRevision e) {
      throw Refusal.notFound("unknown-revision", revision, e.highest());
    }
  }

  private Comparison compare(Catalogue before, Catalogue after) {
    return new Comparison(
        before,
        after,
        Edits.between(before.records(), after.records()),
        before.records().variants().isEmpty() ? List.of() : impacts.between(before, after));
  }
}
