package club.yearline.browse;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Timeline;
import club.yearline.effectivity.Variant;
import club.yearline.effectivity.VariantModel;
import club.yearline.effectivity.YearSpan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * One variant's part of a feature's timeline.
 *
 * @param family its family
 * @param timeline the feature's changes along the variant
 * @param spans its years with their answers
 */
record Line(Family family, Timeline timeline, List<YearSpan> spans) {

  /** The lines of all variants that have a feature: by family name, then first year. */
  static List<Line> of(Feature feature, Catalogue catalogue) {
    List<Line> lines = new ArrayList<>();
    catalogue.records().families().stream()
        .sorted(Comparator.comparing(Family::name).thenComparing(Family::key))
        .flatMap(family -> catalogue.variantsOf(family.key()).stream())
        .forEach(
            variant -> {
              VariantModel model = catalogue.model(variant.key()).orElseThrow();
              model
                  .timeline(feature.key())
                  .ifPresent(t -> lines.add(new Line(model.family(), t, t.spans())));
            });
    return lines;
  }

  /** The lines of some variants, in the given order; those without the feature are left out. */
  static List<Line> of(Feature feature, Catalogue catalogue, List<Variant> variants) {
    List<Line> lines = new ArrayList<>();
    for (Variant variant : variants) {
      catalogue
          .model(variant.key())
          .flatMap(
              model ->
                  model
                      .timeline(feature.key())
                      .map(timeline -> new Line(model.family(), timeline, timeline.spans())))
          .ifPresent(lines::add);
    }
    return lines;
  }

  Variant variant() {
    return timeline.variant();
  }

  /** Every answer, those of stretches within a year included. */
  Stream<Answer> answers() {
    return spans.stream()
        .flatMap(
            s ->
                s.answer().stretches().isEmpty()
                    ? Stream.of(s.answer())
                    : s.answer().stretches().stream().map(t -> t.answer()));
  }
}
