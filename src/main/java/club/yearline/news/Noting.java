package club.yearline.news;

import club.yearline.catalog.EntryEdit;
import club.yearline.catalog.History;
import club.yearline.catalog.Published;
import club.yearline.catalog.Snapshots;
import club.yearline.effectivity.Catalogue;
import java.util.List;
import java.util.Set;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Notes what each revision did, in the transaction that publishes it. */
@Component
class Noting {

  private final Tallies tallies;
  private final History history;
  private final Snapshots snapshots;

  Noting(Tallies tallies, History history, Snapshots snapshots) {
    this.tallies = tallies;
    this.history = history;
    this.snapshots = snapshots;
  }

  @EventListener
  void on(Published published) {
    note(
        published.snapshot().number(),
        published.edits(),
        published.before(),
        published.snapshot().catalogue());
  }

  /** Revisions may have been published before this module was there to note them. */
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

  private void note(int revision, List<EntryEdit> edits, Catalogue before, Catalogue after) {
    Set<Watched> touched = Touched.by(edits, before, after);
    tallies.add(
        revision,
        Tally.of(edits, before, after),
        touched.stream().filter(t -> t.kind() == Watched.Kind.FAMILY).map(Watched::key).toList());
  }
}
