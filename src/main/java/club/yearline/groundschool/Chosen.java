package club.yearline.groundschool;

import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Variant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a hand-out shows: the records that its choice names at a revision.
 *
 * @param handout the choice
 * @param features the features, in the order shown
 * @param variants the variants
 * @param first the first year
 * @param last the last year
 */
record Chosen(
    Handout handout, List<Feature> features, List<Variant> variants, int first, int last) {

  /** Whether a variant and a feature are shown, and any of the years. */
  boolean shows(String variant, String feature, @Nullable Integer from, @Nullable Integer to) {
    return variants.stream().anyMatch(v -> v.key().equals(variant))
        && features.stream().anyMatch(f -> f.key().equals(feature))
        && (from == null || from <= last)
        && (to == null || to >= first);
  }
}
