package club.yearline.news;

import club.yearline.catalog.EntryEdit;
import club.yearline.catalog.History;
import club.yearline.catalog.Published;
import club.yearline.catalog.Snapshot;
import club.yearline.catalog.Snapshots;
import club.yearline.effectivity.Catalogue;
import java.util.List;
import java.util.Set;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Notes what each revision did, and has it told, in the transaction that publishes it. */
@Component
class Noting {

  private final Tallies tallies;
  private final History history;
  private final Snapshots snapshots;
  private final Telling telling;

  Noting(Tallies tallies, History history, Snapshots snapshots, Telling telling) {
    this.telling = telling;
    this.tallies = tallies;
    this.history = history;
    this.snapshots = snapshots;
  }

  @EventListener
  void on(Published published) {
    Snapshot now = published.snapshot();
    Set<Watched> touched =
        note(now.number(), published.edits(), published.before(), now.catalogue());
    telling.published(now.revision(), touched);
  }

  /**
   * Revisions may have been published before this module was there to note them. Nobody is told of
   * those: they are no news.
   */
  @EventListener(ApplicationReadyEvent.class)
  void catchUp() {
    for (int revision : tallies.missing()) {
      note(
          revision,
          history.edits(revision),
          snapshots.at(revision - 1).catalogue(),
          snapshots.at(revision).catalogue());
    }
  }

  private Set<Watched> note(
      int revision, List<EntryEdit> edits, Catalogue before, Catalogue after) {
    Set<Watched> touched = Touched.by(edits, before, after);
    tallies.add(
        revision,
        Tally.of(edits, before, after),
        touched.stream().filter(t -> t.kind() == Watched.Kind.FAMILY).map(Watched::key).toList());
    return touched;
  }
}
