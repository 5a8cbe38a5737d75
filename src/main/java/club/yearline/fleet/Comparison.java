package club.yearline.fleet;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Question;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What was seen on an airframe beside what it should have: the latest observation of each feature,
 * by chapter.
 *
 * @param position what the airframe is; null where the catalogue no longer has such a one
 * @param findings one for each feature that was looked at
 */
record Comparison(@Nullable Position position, List<Finding> findings) {

  Comparison {
    findings = List.copyOf(findings);
  }

  /**
   * A feature that was looked at.
   *
   * @param feature the feature
   * @param expected what it should be; null where the catalogue does not say
   * @param match how that which was seen last stands to it
   * @param seen what was seen, the latest first
   */
  record Finding(Feature feature, @Nullable Answer expected, Match match, List<Observation> seen) {

    Observation latest() {
      return seen.get(0);
    }
  }

  /**
   * Compares.
   *
   * @param seen everything seen on the airframe, the latest first
   */
  static Comparison of(Catalogue catalogue, Airframe airframe, List<Observation> seen) {
    Position position = position(catalogue, airframe).orElse(null);
    Map<String, Answer> expected = new LinkedHashMap<>();
    if (position != null) {
      catalogue.expected(position).forEach(a -> expected.put(a.feature().key(), a));
    }
    Map<String, List<Observation>> byFeature = new LinkedHashMap<>();
    seen.forEach(o -> byFeature.computeIfAbsent(o.feature(), k -> new ArrayList<>()).add(o));
    List<Finding> findings = new ArrayList<>();
    byFeature.forEach(
        (key, of) ->
            catalogue
                .feature(key)
                .map(feature -> finding(feature, expected.get(key), position, of))
                .ifPresent(findings::add));
    findings.sort(
        Comparator.comparing((Finding f) -> f.feature().chapter())
            .thenComparing(f -> f.feature().name(), String.CASE_INSENSITIVE_ORDER));
    return new Comparison(position, findings);
  }

  private static Finding finding(
      Feature feature, @Nullable Answer answer, @Nullable Position position, List<Observation> of) {
    Match match =
        position == null ? Match.UNRECORDED : Match.of(answer, position, of.get(0).value());
    return new Finding(feature, answer, match, of);
  }

  /** What an airframe is, as the catalogue now reads what was registered. */
  static Optional<Position> position(Catalogue catalogue, Airframe airframe) {
    Located located =
        catalogue.locate(new Question(airframe.variant(), airframe.year(), airframe.serial()));
    if (located instanceof Located.Found found) {
      return Optional.of(found.position());
    }
    return located instanceof Located.Ambiguous several
        ? several.candidates().stream()
            .filter(p -> p.series() != null && p.series().key().equals(airframe.series()))
            .findFirst()
        : Optional.empty();
  }

  /** The features in which it differs from how it was built. */
  List<Finding> differences() {
    return findings.stream().filter(f -> f.match().isDifference()).toList();
  }
}
