package club.yearline.spotting;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Timeline;
import club.yearline.effectivity.VariantModel;
import club.yearline.effectivity.YearSpan;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** One feature among the pairs considered: for each pair, the chance of seeing each value. */
final class FeatureChances {

  private final Feature feature;
  private final SeenValues values;

  /** By pair; null where the feature does not belong to the variant: uniform. */
  private final @Nullable Chances[] byPair;

  private FeatureChances(Feature feature, SeenValues values, int pairs) {
    this.feature = feature;
    this.values = values;
    this.byPair = new Chances[pairs];
  }

  /**
   * Works the chances out.
   *
   * @param variants those that have the feature and were produced, by the index of the first pair
   * @param pairs how many pairs are considered
   */
  static FeatureChances of(Feature feature, Map<Integer, VariantModel> variants, int pairs) {
    List<Timeline> timelines =
        variants.values().stream().map(v -> v.timeline(feature.key()).orElseThrow()).toList();
    SeenValues values = SeenValues.of(feature, timelines);
    FeatureChances made = new FeatureChances(feature, values, pairs);
    if (values.size() > 0) {
      variants.forEach(made::fill);
    }
    return made;
  }

  private void fill(int from, VariantModel model) {
    Timeline timeline = model.timeline(feature.key()).orElseThrow();
    int[] years = model.years();
    if (neverChanges(timeline)) {
      AsBuilt built = AsBuilt.of(timeline.at(Position.of(timeline.variant(), years[0])));
      fill(from, timeline, built, years);
      return;
    }
    int pair = from;
    for (YearSpan span : timeline.spans()) {
      int[] spanned = IntStream.rangeClosed(span.firstYear(), span.lastYear()).toArray();
      fill(pair, timeline, AsBuilt.of(span.answer()), spanned);
      pair += spanned.length;
    }
  }

  /** Most features began with a variant and stayed: one answer serves all its years. */
  private static boolean neverChanges(Timeline timeline) {
    List<Change> changes = timeline.changes();
    return changes.size() == 1
        && changes.get(0).cutIn(timeline.variant().key()).orElseThrow().atStart();
  }

  private void fill(int from, Timeline timeline, AsBuilt built, int[] years) {
    Map<Set<String>, Chances> byRetrofits = new HashMap<>();
    for (int i = 0; i < years.length; i++) {
      Set<String> retrofits = retrofits(timeline, Position.of(timeline.variant(), years[i]));
      byPair[from + i] =
          byRetrofits.computeIfAbsent(
              retrofits, r -> Chances.of(built, r, feature.exchange().chance(), values));
    }
  }

  private Set<String> retrofits(Timeline timeline, Position position) {
    return timeline.retrofits().stream()
        .filter(r -> r.fits(position))
        .map(r -> Seen.text(feature, r.value()))
        .collect(Collectors.toUnmodifiableSet());
  }

  /** Whether no value is known: such a feature is left out. */
  boolean isEmpty() {
    return values.size() == 0;
  }

  SeenValues values() {
    return values;
  }

  /** The chance of seeing a value on an airframe of the pair. */
  double at(int pair, String value) {
    int index = values.index(value);
    Chances chances = byPair[pair];
    return index < 0 ? ofNone() : chances == null ? 1.0 / values.size() : chances.of(index);
  }

  /** The chance of seeing a value at a position; null for a variant that lacks the feature. */
  double at(@Nullable Timeline timeline, Position position, String value) {
    int index = values.index(value);
    if (index < 0 || timeline == null) {
      return index < 0 ? ofNone() : 1.0 / values.size();
    }
    Answer answer = timeline.at(position);
    return Chances.of(
            AsBuilt.of(answer), retrofits(timeline, position), feature.exchange().chance(), values)
        .of(index);
  }

  /** Whether an airframe of the pair may have left the factory with a value. */
  boolean isBuilt(int pair, String value) {
    int index = values.index(value);
    Chances chances = byPair[pair];
    return index >= 0 && (chances == null || chances.isBuilt(index));
  }

  /** A number that is recorded nowhere can only have come by an exchange. */
  private double ofNone() {
    return feature.exchange().chance() / values.size();
  }

  /**
   * By how many bits the entropy of the pairs' shares is expected to drop once the feature is
   * looked at. It is worked out from the values' side (what the value tells of the pair, the pair
   * tells of the value), which costs one pass over the pairs.
   */
  double bits(double[] shares) {
    int n = values.size();
    double[] extra = new double[n];
    double base = 0;
    double known = 0;
    for (int i = 0; i < shares.length; i++) {
      Chances chances = byPair[i];
      if (chances == null) {
        base += shares[i] / n;
        known += shares[i] * Math.log(n) / Math.log(2);
      } else {
        base += chances.addTo(extra, shares[i]);
        known += shares[i] * chances.bits();
      }
    }
    double all = 0;
    for (double more : extra) {
      all += Bits.of(base + more);
    }
    return Math.max(0, all - known);
  }
}
