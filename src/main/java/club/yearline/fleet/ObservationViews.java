package club.yearline.fleet;

import club.yearline.accounts.Actor;
import club.yearline.catalog.Chapters;
import club.yearline.catalog.Links;
import club.yearline.catalog.Snapshots;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Position;
import club.yearline.web.Phrases;
import club.yearline.web.Refusal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** What the form about something seen shows. */
@Component
class ObservationViews {

  private final Observations observations;
  private final Snapshots snapshots;
  private final Chapters chapters;
  private final Wording wording;
  private final Phrases phrases;

  ObservationViews(
      Observations observations,
      Snapshots snapshots,
      Chapters chapters,
      Wording wording,
      Phrases phrases) {
    this.observations = observations;
    this.snapshots = snapshots;
    this.chapters = chapters;
    this.wording = wording;
    this.phrases = phrases;
  }

  /** The features of a chapter. */
  public record FeatureChapter(String code, String title, List<FeatureLine> features) {}

  /** A feature to choose, and when it was seen last; null where it was not. */
  public record FeatureLine(String name, String href, @Nullable String seen) {}

  /**
   * The feature that was chosen.
   *
   * @param key its key
   * @param name its name
   * @param description plain text; null where there is none
   * @param expected what this airframe should have; null where the catalogue does not say
   * @param number whether its values are numbers
   * @param unit the unit of those; null for none
   * @param values its values
   */
  public record FeatureChoice(
      String key,
      String name,
      @Nullable String description,
      @Nullable String expected,
      boolean number,
      @Nullable String unit,
      List<ValueChoice> values) {}

  /** A value to choose, with how to recognise it. */
  public record ValueChoice(
      String key, String label, @Nullable String cue, @Nullable String picture, boolean chosen) {}

  String heading(Actor actor, Airframe airframe) {
    return new Headings(snapshots.head().catalogue(), phrases).of(airframe.seenBy(actor));
  }

  /** The features that airframes of this variant have, by chapter. */
  List<FeatureChapter> features(Airframe airframe, Links links) {
    Catalogue catalogue = links.reading().catalogue();
    Map<String, String> seen =
        observations.findByAirframeIdOrderBySeenOnDescIdDesc(airframe.id()).stream()
            .collect(
                Collectors.toMap(
                    Observation::feature, o -> o.on().toString(), (latest, earlier) -> latest));
    Map<String, List<FeatureLine>> byCode = new LinkedHashMap<>();
    String here = links.root() + "/fleet/" + airframe.id() + "/observe?feature=";
    for (Feature feature : features(catalogue, airframe)) {
      byCode
          .computeIfAbsent(feature.chapter(), k -> new ArrayList<>())
          .add(new FeatureLine(feature.name(), here + feature.key(), seen.get(feature.key())));
    }
    return byCode.entrySet().stream()
        .map(e -> new FeatureChapter(e.getKey(), title(e.getKey()), e.getValue()))
        .toList();
  }

  private String title(String chapter) {
    return chapters.title(chapter).orElseGet(() -> phrases.of("fleet.chapter.other"));
  }

  private static List<Feature> features(Catalogue catalogue, Airframe airframe) {
    return catalogue
        .model(airframe.variant())
        .map(model -> model.timelines().stream().map(t -> t.feature()).toList())
        .orElseGet(() -> catalogue.records().features());
  }

  /**
   * The form's feature.
   *
   * @throws Refusal if there is none of that key
   */
  FeatureChoice feature(Airframe airframe, ObservationForm form, Links links) {
    Catalogue catalogue = links.reading().catalogue();
    Feature feature =
        Optional.ofNullable(form.feature())
            .flatMap(catalogue::feature)
            .orElseThrow(
                () -> Refusal.notFound("fleet-no-feature", String.valueOf(form.feature())));
    return new FeatureChoice(
        feature.key(),
        feature.name(),
        feature.description(),
        expected(catalogue, airframe, feature).orElse(null),
        feature.isNumber(),
        feature.unit(),
        feature.values().stream().map(v -> value(v, form, links)).toList());
  }

  private Optional<String> expected(Catalogue catalogue, Airframe airframe, Feature feature) {
    return Comparison.position(catalogue, airframe)
        .flatMap((Position p) -> answer(catalogue, p, feature))
        .map(wording::answer);
  }

  private static Optional<Answer> answer(Catalogue catalogue, Position position, Feature feature) {
    return catalogue.expected(position).stream()
        .filter(a -> a.feature().key().equals(feature.key()))
        .findFirst();
  }

  private static ValueChoice value(FeatureValue value, ObservationForm form, Links links) {
    String picture =
        Optional.ofNullable(value.picture())
            .flatMap(links.reading().catalogue()::picture)
            .map(links::picture)
            .orElse(null);
    return new ValueChoice(
        value.key(), value.label(), value.cue(), picture, value.key().equals(form.value()));
  }
}
