package club.yearline.inspection;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Retrofit;
import club.yearline.spotting.Seen;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What an airframe is said to be, and what observations say of that. */
final class Expectation {

  private final Catalogue catalogue;
  private final Homes homes;
  private final Map<String, Answer> answers = new HashMap<>();
  private final List<Retrofit> retrofits;

  /**
   * A claim.
   *
   * @param position what the airframe is said to be
   * @param expected what it should have
   */
  Expectation(Catalogue catalogue, Position position, List<Answer> expected) {
    this.catalogue = catalogue;
    this.homes = new Homes(catalogue, position.variant().family());
    expected.forEach(a -> answers.put(a.feature().key(), a));
    this.retrofits =
        catalogue.records().retrofits().stream().filter(r -> r.fits(position)).toList();
  }

  /** The finding of an observation. */
  Finding finding(Seen seen) {
    Answer answer = answers.get(seen.feature().key());
    List<Retrofit> bringing =
        of(seen.feature()).filter(r -> Matching.shows(seen, r.value())).toList();
    Match match = Matching.of(seen, answer, !bringing.isEmpty());
    boolean expected = match.isExpected();
    return new Finding(
        seen,
        match,
        answer,
        match == Match.RETROFIT ? bringing : List.of(),
        missing(seen),
        expected ? List.of() : homes.of(seen, m -> m.isExpected() && m != Match.EITHER),
        expected ? List.of() : homes.of(seen, m -> m == Match.EITHER));
  }

  private List<Retrofit> missing(Seen seen) {
    return of(seen.feature())
        .filter(catalogue::isMandatory)
        .filter(r -> !Matching.shows(seen, r.value()))
        .toList();
  }

  /** Every mandatory retrofit that the position calls for, and whether the airframe shows it. */
  List<CalledFor> calledFor(List<Seen> observations) {
    return retrofits.stream()
        .filter(catalogue::isMandatory)
        .flatMap(
            r ->
                catalogue.feature(r.feature()).stream()
                    .map(f -> new CalledFor(r, f, shown(r, observations))))
        .toList();
  }

  private static CalledFor.Shown shown(Retrofit retrofit, List<Seen> observations) {
    List<Seen> of =
        observations.stream().filter(s -> s.feature().key().equals(retrofit.feature())).toList();
    if (of.isEmpty()) {
      return CalledFor.Shown.NOT_LOOKED_AT;
    }
    return of.stream().anyMatch(s -> Matching.shows(s, retrofit.value()))
        ? CalledFor.Shown.SHOWN
        : CalledFor.Shown.NOT_SHOWN;
  }

  private Stream<Retrofit> of(Feature feature) {
    return retrofits.stream().filter(r -> r.feature().equals(feature.key()));
  }
}
