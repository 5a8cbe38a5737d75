package club.yearline.corrections;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Finding;
import club.yearline.effectivity.Records;
import java.util.List;
import java.util.Optional;

/**
 * What a moderator decides on: what a correction would make of the catalogue, as it is now.
 *
 * @param onto number of the newest revision, onto which it would be published
 * @param before the newest state
 * @param candidate what it would do entry by entry
 * @param records the records that it would make; empty where clashes or faults stand in the way
 * @param after the state that it would make; empty where errors stand in the way too
 * @param added findings that it brings
 * @param removed findings that it mends
 */
record Review(
    int onto,
    Catalogue before,
    Candidate candidate,
    Optional<Records> records,
    Optional<Catalogue> after,
    List<Finding> added,
    List<Finding> removed) {

  /** Whether it can be published as it stands. */
  boolean isPublishable() {
    return after.isPresent() && !candidate.changesNothing();
  }

  boolean hasErrors() {
    return added.stream().anyMatch(Finding::isError);
  }
}
