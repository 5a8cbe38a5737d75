package club.yearline.catalog;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.annotation.PostConstruct;
import java.util.Collection;
import java.util.List;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import org.springframework.transaction.event.TransactionalEventListener;

/**
 * The published states of the catalogue. The newest is at hand; past ones are built on demand and
 * kept as long as there is room.
 */
@Component
public class Snapshots {

  /** Entries in all past states kept together: some hundred small states or a few large ones. */
  private static final long ENTRIES_KEPT = 400_000;

  private final StoredSnapshots stored;
  private final Revisions revisions;
  private volatile Snapshot head = Snapshot.NONE;
  private final Cache<Integer, Snapshot> past =
      Caffeine.newBuilder()
          .maximumWeight(ENTRIES_KEPT)
          .weigher((Integer revision, Snapshot s) -> s.catalogue().records().size() + 1)
          .build();

  Snapshots(StoredSnapshots stored, Revisions revisions) {
    this.stored = stored;
    this.revisions = revisions;
  }

  /** The newest state; revision 0 and an empty catalogue before anything is published. */
  public Snapshot head() {
    return head;
  }

  /**
   * The state at a revision.
   *
   * @throws UnknownRevision if there is no such revision
   */
  public Snapshot at(int revision) {
    Snapshot newest = head();
    if (revision > newest.number()) {
      newest = catchUp();
    }
    if (revision < 0 || revision > newest.number()) {
      throw new UnknownRevision(revision, newest.number());
    }
    Snapshot known = newest;
    return revision == known.number() ? known : past.get(revision, n -> stored.at(n, known));
  }

  /** All revisions, newest first. */
  public List<Revision> revisions() {
    return revisions.findAllByOrderByNumberDesc().stream()
        .map(PublishedRevision::toRevision)
        .toList();
  }

  /** Some revisions, newest first; numbers that there are no revisions of are left out. */
  public List<Revision> revisions(Collection<Integer> numbers) {
    return numbers.isEmpty()
        ? List.of()
        : revisions.findByNumberInOrderByNumberDesc(numbers).stream()
            .map(PublishedRevision::toRevision)
            .toList();
  }

  /** The state that the next publication starts from, inside its transaction. */
  Snapshot before(int next) {
    return stored.at(next - 1, head());
  }

  /** Reads the newest state at start, and later what other instances have published. */
  @PostConstruct
  @Scheduled(fixedDelay = 500)
  void lookForNewHead() {
    catchUp();
  }

  @TransactionalEventListener
  void on(Published published) {
    advance(published.snapshot());
  }

  private synchronized Snapshot catchUp() {
    return advance(stored.newest(head));
  }

  private synchronized Snapshot advance(Snapshot newer) {
    if (head.number() < newer.number()) {
      past.put(head.number(), head);
      head = newer;
    }
    return head;
  }
}
