package club.yearline.corrections;

import club.yearline.catalog.Edition;
import club.yearline.catalog.EntryRef;
import club.yearline.catalog.Snapshot;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.EntryKind;
import club.yearline.tables.Sheet;
import club.yearline.tables.SheetReader;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;

/**
 * What a correction would make of the newest state of the catalogue.
 *
 * @param pieces what it would do to each entry, in the order of its edits
 */
record Candidate(List<Piece> pieces) {

  /**
   * What it would do to one entry.
   *
   * @param proposal what is proposed
   * @param merge what comes of it and of what was published since
   * @param theirs the entry as published now; null where there is none
   * @param entry the entry as it would be published, with the correction's sources; empty where it
   *     would be withdrawn, or cannot be read
   * @param faults cells that cannot be read
   */
  record Piece(
      Proposal proposal,
      Merge merge,
      @Nullable Entry theirs,
      Optional<Entry> entry,
      List<SheetReader.Fault> faults) {

    /** Whether it takes the published entry out. */
    boolean isWithdrawal() {
      return merge.result() == null && theirs != null;
    }

    /** Whether the entry would stay as it is published. */
    boolean changesNothing() {
      return merge.result() == null
          ? theirs == null
          : entry.filter(e -> e.equals(theirs)).isPresent();
    }
  }

  /** Whether something must be decided or mended before it can be looked at as a whole. */
  boolean isBlocked() {
    return pieces.stream().anyMatch(p -> !p.merge().clashes().isEmpty() || !p.faults().isEmpty());
  }

  boolean changesNothing() {
    return pieces.stream().allMatch(Piece::changesNothing);
  }

  /** What would be published; without pictures and names. */
  Edition edition(String note) {
    List<Entry> put =
        pieces.stream().filter(p -> !p.changesNothing()).flatMap(p -> p.entry().stream()).toList();
    List<EntryRef> withdrawn =
        pieces.stream().filter(Piece::isWithdrawal).map(p -> p.proposal().ref()).toList();
    return Edition.of(note, null, put).withdrawing(withdrawn);
  }

  /** Makes candidates; keeps what it needs to know of a state while it does. */
  static final class Maker {

    private final Snapshot newest;
    private final IntFunction<Snapshot> states;
    private @Nullable Set<String> citationKeys;

    /**
     * A maker.
     *
     * @param newest the state onto which a correction would be published
     * @param states the states that corrections were begun at
     */
    Maker(Snapshot newest, IntFunction<Snapshot> states) {
      this.newest = newest;
      this.states = states;
    }

    Candidate make(List<Proposal> proposals, List<Ground> grounds) {
      return new Candidate(proposals.stream().map(p -> piece(p, grounds)).toList());
    }

    private Piece piece(Proposal proposal, List<Ground> grounds) {
      Entry theirs = newest.entry(proposal.ref()).orElse(null);
      Sheet base = states.apply(proposal.base()).entry(proposal.ref()).map(Sheet::of).orElse(null);
      Sheet now = theirs == null ? null : Sheet.of(theirs);
      Merge merge = Merge.of(base, proposal.sheet(), now);
      Sheet result = merge.result();
      if (result == null) {
        return new Piece(proposal, merge, theirs, Optional.empty(), List.of());
      }
      Sheet sourced = result.equals(now) ? result : sourced(result, grounds);
      SheetReader.Reading reading = SheetReader.read(sourced);
      return new Piece(proposal, merge, theirs, reading.made(), reading.faults());
    }

    /** The entry with a citation for each ground that it does not cite yet. */
    private Sheet sourced(Sheet sheet, List<Ground> grounds) {
      if (sheet.kind() == EntryKind.SOURCE) {
        return sheet;
      }
      Sheet sourced = sheet;
      for (Ground ground : grounds) {
        if (sourced.rows("citations").stream().noneMatch(row -> cites(row, ground))) {
          sourced = sourced.plus("citations", citation(sheet.key(), ground));
        }
      }
      return sourced;
    }

    private static boolean cites(Map<String, String> row, Ground ground) {
      return ground.source().equals(row.get("source"))
          && ground.locator().equals(row.getOrDefault("locator", ""))
          && ground.stance().code().equals(row.get("stance"));
    }

    private Map<String, String> citation(String entry, Ground ground) {
      return Map.of(
          "key", CitationKeys.free(entry, ground.source(), taken()),
          "source", ground.source(),
          "locator", ground.locator(),
          "stance", ground.stance().code(),
          "note", Objects.requireNonNullElse(ground.note(), ""));
    }

    /** The keys of all citations; gathered when first needed, since that goes through them all. */
    private Set<String> taken() {
      Set<String> taken = citationKeys;
      if (taken == null) {
        taken = CitationKeys.in(newest.catalogue().records());
        citationKeys = taken;
      }
      return taken;
    }
  }
}
