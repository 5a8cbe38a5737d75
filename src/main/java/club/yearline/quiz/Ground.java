package club.yearline.quiz;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Timeline;
import club.yearline.effectivity.Values;
import club.yearline.effectivity.VariantModel;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** What a quiz is made from: the chosen variants and features, always in one order. */
final class Ground {

  private final Catalogue catalogue;
  private final Selection selection;
  private final List<VariantModel> models;
  private final Judge judge;

  Ground(Catalogue catalogue, Selection selection) {
    this.catalogue = catalogue;
    this.selection = selection;
    this.judge = new Judge(catalogue);
    this.models =
        catalogue.variantsOf(selection.family()).stream()
            .filter(v -> selection.variants().isEmpty() || selection.variants().contains(v.key()))
            .map(v -> catalogue.model(v.key()).orElseThrow())
            .toList();
  }

  Catalogue catalogue() {
    return catalogue;
  }

  Judge judge() {
    return judge;
  }

  List<VariantModel> models() {
    return models;
  }

  /** A variant's chosen features along its production, by key. */
  List<Timeline> timelines(VariantModel model) {
    return model.timelines().stream()
        .filter(t -> isChosen(t.feature()))
        .sorted(Comparator.comparing(t -> t.feature().key()))
        .toList();
  }

  private boolean isChosen(Feature feature) {
    boolean all = selection.features().isEmpty() && selection.chapters().isEmpty();
    return all
        || selection.features().contains(feature.key())
        || selection.chapters().contains(feature.chapter());
  }

  /** The years of a variant's production. */
  List<Position> years(VariantModel model) {
    return Arrays.stream(model.years()).mapToObj(y -> Position.of(model.variant(), y)).toList();
  }

  /** The years of all chosen variants that have the feature. */
  List<Position> years(Feature feature) {
    return models.stream()
        .filter(m -> m.timeline(feature.key()).isPresent())
        .flatMap(m -> years(m).stream())
        .toList();
  }

  /** The features of the chosen variants, by key. */
  List<Feature> features() {
    return models.stream()
        .flatMap(m -> timelines(m).stream())
        .map(Timeline::feature)
        .distinct()
        .sorted(Comparator.comparing(Feature::key))
        .toList();
  }

  /** The values of a feature that a wrong answer may name: those recorded for it. */
  List<String> values(Feature feature) {
    if (!feature.isNumber()) {
      return feature.values().stream().map(v -> Values.canonical(v.key())).toList();
    }
    return models.stream()
        .flatMap(m -> m.timeline(feature.key()).stream())
        .flatMap(t -> offered(t).stream())
        .distinct()
        .sorted(Comparator.comparing(v -> Values.number(v).orElse(BigDecimal.ZERO)))
        .toList();
  }

  /** The values that a variant was offered with. */
  List<String> offered(Timeline timeline) {
    return timeline.changes().stream()
        .flatMap(c -> c.offering().stream())
        .map(o -> o.canonicalValue())
        .distinct()
        .toList();
  }
}
