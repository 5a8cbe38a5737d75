package club.yearline.corrections;

import club.yearline.catalog.EntryRef;
import club.yearline.catalog.Snapshot;
import club.yearline.catalog.Snapshots;
import club.yearline.citation.Citation;
import club.yearline.citation.Source;
import club.yearline.citation.SourceKind;
import club.yearline.citation.Stance;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.SourceEntry;
import club.yearline.tables.Sheet;
import club.yearline.web.Phrases;
import club.yearline.web.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/**
 * What a correction proposes that stands on the airframes of the register. They are one source for
 * all changes; where nobody has published it yet, it is proposed with the first correction that
 * cites it.
 */
@Component
class ObservedAirframes {

  /** Key of the source. */
  static final String SOURCE = "airframe-register";

  private final Snapshots snapshots;
  private final Phrases phrases;

  ObservedAirframes(Snapshots snapshots, Phrases phrases) {
    this.snapshots = snapshots;
    this.phrases = phrases;
  }

  /** The change as it shall read, and the source if there is none yet. */
  List<Proposal> proposals(Narrowing narrowing) {
    Snapshot head = snapshots.head();
    Change change =
        head.catalogue()
            .change(narrowing.change())
            .orElseThrow(() -> Refusal.notFound("unknown-change", narrowing.change()));
    List<Proposal> proposals = new ArrayList<>();
    if (head.catalogue().source(SOURCE).isEmpty()) {
      proposals.add(proposal(new SourceEntry(source()), head));
    }
    proposals.add(proposal(narrowed(change, narrowing, head), head));
    return proposals;
  }

  private static Proposal proposal(Entry entry, Snapshot head) {
    return new Proposal(EntryRef.of(entry), Sheet.of(entry), head.number());
  }

  /** That the correction stands on them. */
  Ground ground(Narrowing narrowing) {
    return Ground.of(SOURCE, narrowing.locator(), Stance.SUPPORTS, narrowing.note());
  }

  private Source source() {
    return new Source(
        SOURCE,
        SourceKind.OBSERVATION,
        phrases.of("corrections.register.title"),
        null,
        null,
        null,
        null,
        null,
        null,
        phrases.of("corrections.register.note"));
  }

  private static Change narrowed(Change change, Narrowing narrowing, Snapshot head) {
    CutIn cutIn = narrowing.cutIn();
    Optional<Citation> known =
        change.citations().stream()
            .filter(c -> c.source().equals(SOURCE) && cutIn.variant().equals(c.variant()))
            .findFirst();
    String key =
        known
            .map(Citation::key)
            .orElseGet(
                () ->
                    CitationKeys.free(
                        change.key(), SOURCE, CitationKeys.in(head.catalogue().records())));
    Citation citation =
        new Citation(
            key, cutIn.variant(), SOURCE, narrowing.locator(), Stance.SUPPORTS, narrowing.note());
    List<Citation> citations = new ArrayList<>(change.citations());
    known.ifPresent(citations::remove);
    citations.add(citation);
    return new Change(
        change.key(),
        change.feature(),
        change.title(),
        change.detail(),
        change.offering(),
        change.cutIns().stream().map(c -> c.variant().equals(cutIn.variant()) ? cutIn : c).toList(),
        citations);
  }
}
