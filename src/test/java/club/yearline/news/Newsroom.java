package club.yearline.news;

import club.yearline.catalog.Contributor;
import club.yearline.catalog.Edition;
import club.yearline.catalog.Publication;
import club.yearline.catalog.Snapshots;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.YearMeaning;
import club.yearline.testing.Sample;
import java.util.List;
import org.springframework.boot.test.context.TestComponent;

/** Publishes what tests need news of. */
@TestComponent
class Newsroom {

  private final Publication publication;
  private final Snapshots snapshots;

  Newsroom(Publication publication, Snapshots snapshots) {
    this.publication = publication;
    this.snapshots = snapshots;
  }

  /** Publishes the Turnstone, if nobody has. */
  void start() {
    if (newest() == 0) {
      publish("Begins", Sample.turnstone().toArray(Entry[]::new));
    }
  }

  int newest() {
    return snapshots.head().number();
  }

  int publish(String note, Entry... entries) {
    return publishBy(Contributor.NOBODY, Contributor.NOBODY, note, entries);
  }

  int publishBy(Contributor author, Contributor approver, String note, Entry... entries) {
    return publication
        .publish(Edition.of(note, null, List.of(entries)).by(author, approver))
        .number();
  }

  /** The change of the latch under another title. */
  Change latch(String title) {
    Change now = snapshots.head().catalogue().change("door-latch-rotary").orElseThrow();
    return new Change(
        now.key(),
        now.feature(),
        title,
        now.detail(),
        now.offering(),
        now.cutIns(),
        now.citations());
  }

  /** The change of the latch, from another year on. */
  Change latchFrom(int year) {
    Change now = latch("Rotary latch");
    CutIn cutIn = new CutIn("la-2b", false, year, year, null, null, null);
    return new Change(
        now.key(),
        now.feature(),
        now.title(),
        now.detail(),
        now.offering(),
        List.of(cutIn),
        now.citations());
  }

  Feature latchFeature(String description) {
    Feature now = snapshots.head().catalogue().feature("door-latch").orElseThrow();
    return new Feature(
        now.key(),
        now.name(),
        now.chapter(),
        now.kindOfValue(),
        now.unit(),
        now.visibility(),
        now.exchange(),
        description,
        now.values(),
        now.citations());
  }

  Family whimbrel(String summary) {
    return new Family(
        "whimbrel",
        "Lindmark Aero",
        "LA-5 Whimbrel",
        null,
        YearMeaning.MANUFACTURE,
        null,
        summary,
        List.of());
  }
}
