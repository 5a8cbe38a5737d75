package club.yearline.fleet;

import club.yearline.accounts.Actor;
import club.yearline.accounts.People;
import club.yearline.catalog.Chapters;
import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Variant;
import club.yearline.fleet.AirframeView.AirframeStamp;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Lays out one airframe: its data plate, and what was seen on it. */
@Component
class AirframeViews {

  private final Observations observations;
  private final Photographs photographs;
  private final People people;
  private final Chapters chapters;
  private final Wording wording;
  private final Phrases phrases;

  AirframeViews(
      Observations observations,
      Photographs photographs,
      People people,
      Chapters chapters,
      Wording wording,
      Phrases phrases) {
    this.observations = observations;
    this.photographs = photographs;
    this.people = people;
    this.chapters = chapters;
    this.wording = wording;
    this.phrases = phrases;
  }

  AirframeView of(Actor actor, Airframe airframe, Links links) {
    Catalogue catalogue = links.reading().catalogue();
    Comparison compared =
        Comparison.of(
            catalogue,
            airframe,
            observations.findByAirframeIdOrderBySeenOnDescIdDesc(airframe.id()));
    Registered registered = airframe.seenBy(actor);
    Headings headings = new Headings(catalogue, phrases);
    SeenLines lines =
        new SeenLines(
            links,
            airframe,
            photographs.list(airframe.id()),
            people.nameOf(airframe.owner()),
            wording,
            phrases);
    return new AirframeView(
        airframe.id(),
        headings.of(registered),
        headings.variantYear(registered),
        stamps(airframe, catalogue, links),
        notices(compared),
        airframe.remarks(),
        airframe.isOwnedBy(actor),
        airframe.isShared(),
        airframe.isSerialShown(),
        airframe.serial() != null,
        compared.differences().stream().map(lines::spot).toList(),
        compared.findings().isEmpty()
            ? null
            : phrases.count("fleet.differing", compared.differences().size()),
        Optional.ofNullable(compared.position()).map(links::expected).orElse(null),
        lines.byChapter(compared.findings(), chapters));
  }

  private List<String> notices(Comparison compared) {
    Position position = compared.position();
    if (position == null) {
      return List.of(phrases.of("fleet.notice.unknown"));
    }
    return position.year() == null ? List.of(phrases.of("fleet.notice.no-year")) : List.of();
  }

  private List<AirframeStamp> stamps(Airframe airframe, Catalogue catalogue, Links links) {
    List<AirframeStamp> stamps = new ArrayList<>();
    if (airframe.registration() != null) {
      stamps.add(stamp("registration", airframe.registration()));
      stamps.add(
          stamp(
              "state",
              Registration.of(airframe.registration())
                  .format()
                  .map(MarkFormat::state)
                  .orElseGet(() -> phrases.of("fleet.state.unknown"))));
    }
    if (airframe.serial() != null) {
      stamps.add(stamp("serial", airframe.serial()));
    }
    Optional<Variant> variant = catalogue.variant(airframe.variant());
    stamps.add(
        new AirframeStamp(
            phrases.of("fleet.plate.variant"),
            variant.map(Variant::designation).orElse(airframe.variant()),
            variant.map(v -> links.variant(v.key())).orElse(null)));
    Optional<Family> family = variant.flatMap(v -> catalogue.family(v.family()));
    stamps.add(year(airframe, family));
    family.ifPresent(
        f ->
            stamps.add(
                new AirframeStamp(
                    phrases.of("fleet.plate.family"), f.name(), links.family(f.key()))));
    stamps.add(stamp("owner", people.nameOf(airframe.owner())));
    stamps.add(stamp("compared", phrases.of("fleet.compared", links.reading().revision())));
    return stamps;
  }

  private AirframeStamp year(Airframe airframe, Optional<Family> family) {
    String name =
        family.map(f -> "fleet.plate.year." + f.yearMeans().code()).orElse("fleet.plate.year");
    return new AirframeStamp(
        phrases.of(name),
        airframe.year() == null ? phrases.of("fleet.year.unknown") : airframe.year().toString(),
        null);
  }

  private AirframeStamp stamp(String name, String text) {
    return new AirframeStamp(phrases.of("fleet.plate." + name), text, null);
  }
}
