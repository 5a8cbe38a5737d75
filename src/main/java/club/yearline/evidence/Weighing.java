package club.yearline.evidence;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Serial;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.VariantModel;
import club.yearline.estimation.Bounds;
import club.yearline.estimation.CutInQuestion;
import club.yearline.estimation.Estimate;
import club.yearline.estimation.Gathered;
import club.yearline.estimation.Observed;
import club.yearline.estimation.Shows;
import club.yearline.evidence.Weighed.Stood;
import club.yearline.fleet.Sighting;
import club.yearline.fleet.Sightings;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/**
 * Weighs cut-ins by the register as it is today. An airframe whose owner did not agree that its
 * serial is shown counts as if it stood at the far end of its band: an old one at the lower, a new
 * one at the upper. So nothing that is computed can tell its serial, whatever bounds a reader
 * tries, and the answer is a little wider than it need be, never narrower.
 */
@Component
class Weighing {

  private final Sightings sightings;

  Weighing(Sightings sightings) {
    this.sightings = sightings;
  }

  /** The cut-ins of a change that may be asked about: a variant and a series each. */
  static List<CutInQuestion> questions(Catalogue catalogue, Change change) {
    return change.cutIns().stream()
        .filter(c -> !c.atStart())
        .flatMap(c -> questions(catalogue, change, c).stream())
        .toList();
  }

  private static List<CutInQuestion> questions(Catalogue catalogue, Change change, CutIn cutIn) {
    List<Series> series = CutInQuestion.series(catalogue, cutIn);
    return series.stream()
        .map(s -> CutInQuestion.of(catalogue, change, cutIn.variant(), s))
        .toList();
  }

  /**
   * Weighs one cut-in.
   *
   * @param named whether airframes are named whose owners agreed; else nobody is
   */
  Weighed weigh(
      Catalogue catalogue, Change change, CutInQuestion question, Bounds bounds, boolean named) {
    String variant = question.cutIn().variant();
    VariantModel model = catalogue.model(variant).orElseThrow();
    Bands bands = Bands.of(model, question.series());
    List<Sighting> seen = sightings.latest(change.feature(), question.series().key(), variant);
    Gathered gathered =
        question.gather(seen.stream().map(s -> observed(s, question, bands)).toList());
    return new Weighed(
        change,
        model.variant(),
        question,
        counted(seen, gathered, bands, named),
        gathered,
        Estimate.of(bounds, gathered.counted()));
  }

  private static Observed observed(Sighting sighting, CutInQuestion question, Bands bands) {
    Shows shows = question.shows(sighting.value());
    Bounds band = bands.around(sighting.serial().ordinal());
    Serial serial =
        sighting.serialShown()
            ? sighting.serial()
            : Serial.of(shows == Shows.NEW ? band.last() : band.first());
    return new Observed(name(sighting), sighting.series(), serial, shows, sighting.on());
  }

  private static List<Stood> counted(
      List<Sighting> seen, Gathered gathered, Bands bands, boolean named) {
    Set<String> all = new HashSet<>();
    gathered.counted().forEach(s -> all.add(s.airframe()));
    Set<String> young =
        gathered.counted().stream()
            .filter(s -> s.isNew())
            .map(s -> s.airframe())
            .collect(Collectors.toSet());
    return seen.stream()
        .filter(s -> all.contains(name(s)))
        .map(s -> stood(s, young.contains(name(s)), bands, named))
        .toList();
  }

  private static Stood stood(Sighting sighting, boolean isNew, Bands bands, boolean named) {
    long ordinal = sighting.serial().ordinal();
    boolean shown = named && sighting.serialShown();
    return new Stood(
        sighting.observation(),
        name(sighting),
        sighting.serial(),
        shown ? new Bounds(ordinal, ordinal) : bands.around(ordinal),
        sighting.serialShown(),
        shown,
        isNew,
        sighting.on());
  }

  private static String name(Sighting sighting) {
    return Long.toString(sighting.airframe());
  }
}
