package club.yearline.spotting;

import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Timeline;
import club.yearline.effectivity.VariantModel;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The pairs of variant and year among which an airframe is looked for, with the chances of what is
 * seen on them. Immutable for those who use it, and safe for any number of threads: what is known
 * of a feature is worked out when the feature is first asked about.
 */
public final class Considered {

  private final List<VariantModel> models;
  private final List<Pair> pairs;
  private final Prior prior;
  private final double[] weights;
  private final Map<String, Feature> features = new LinkedHashMap<>();
  private final Map<String, VariantModel> byVariant = new HashMap<>();
  private final Map<String, FeatureChances> chances = new ConcurrentHashMap<>();

  Considered(List<VariantModel> models) {
    this.models = List.copyOf(models);
    List<Pair> made = new ArrayList<>();
    for (VariantModel model : models) {
      byVariant.put(model.variant().key(), model);
      for (int year : model.years()) {
        made.add(new Pair(model.variant(), year));
      }
      model.timelines().forEach(t -> features.putIfAbsent(t.feature().key(), t.feature()));
    }
    this.pairs = List.copyOf(made);
    this.prior = new Prior(models);
    this.weights = prior.weights();
  }

  /** The pairs: by family, then by the variant's first year and key, then by year. */
  public List<Pair> pairs() {
    return pairs;
  }

  /** The features that belong to at least one of the variants. */
  public List<Feature> features() {
    return List.copyOf(features.values());
  }

  /**
   * The values that a feature can show: a choice's recorded ones; for a figure the distinct numbers
   * recorded for the variants, smallest first, and none where none is recorded.
   */
  public List<String> values(Feature feature) {
    return of(feature).values().all();
  }

  /**
   * Airframes that each pair is reckoned to have, in the order of {@link #pairs}; their ratios are
   * the prior.
   */
  public double[] weights() {
    return weights.clone();
  }

  /**
   * Ranks the pairs by what was seen.
   *
   * @throws IllegalArgumentException if a feature was seen twice
   */
  public Ranking rank(Collection<Seen> seen) {
    return new Ranking(this, inOrder(seen));
  }

  /**
   * The chance (above 0, to 1) of seeing a value on an airframe at a position, which may be one
   * serial. 1 for a figure of which no value is recorded: such a feature is left out.
   */
  public double chance(Position position, Seen seen) {
    FeatureChances known = of(seen.feature());
    return known.isEmpty()
        ? 1
        : known.at(timeline(position, seen.feature()).orElse(null), position, seen.value());
  }

  /**
   * Natural logarithm of the chance of all that was seen, given a position: 0 for nothing seen,
   * else at most 0.
   */
  public double logLikelihood(Position position, Collection<Seen> seen) {
    return inOrder(seen).stream().mapToDouble(s -> Math.log(chance(position, s))).sum();
  }

  /**
   * Weighs a claim against the other pairs. Where it names a serial, its chances are taken there. A
   * claimed year that is not among the pairs (of a run without a last year) joins them.
   *
   * @throws IllegalArgumentException if a feature was seen twice, or the claim's variant is none of
   *     those considered
   */
  public Weighed weigh(Claim claim, Collection<Seen> seen) {
    if (!byVariant.containsKey(claim.variant().key())) {
      throw new IllegalArgumentException(claim.variant().key() + " is none of those considered");
    }
    return new Weighing(this, inOrder(seen)).of(claim);
  }

  private Optional<Timeline> timeline(Position position, Feature feature) {
    return Optional.ofNullable(byVariant.get(position.variant().key()))
        .flatMap(model -> model.timeline(feature.key()));
  }

  /** The index of a pair; empty where it is not considered. */
  OptionalInt index(String variant, int year) {
    for (int i = 0; i < pairs.size(); i++) {
      if (pairs.get(i).is(variant, year)) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }

  /** What a pair weighs before anything is seen. */
  double weight(int pair) {
    return weights[pair];
  }

  /** What a pair of the family weighs that has no blocks. */
  double weightWithoutBlocks(String family) {
    return prior.instead(family);
  }

  /** What is known of a feature. */
  FeatureChances of(Feature feature) {
    return chances.computeIfAbsent(feature.key(), key -> workOut(feature));
  }

  /** Works out what is known of every feature, on all processors. */
  void workOut() {
    features.values().parallelStream().forEach(this::of);
  }

  private FeatureChances workOut(Feature feature) {
    Map<Integer, VariantModel> variants = new LinkedHashMap<>();
    int from = 0;
    for (VariantModel model : models) {
      int years = model.years().length;
      if (years > 0 && model.timeline(feature.key()).isPresent()) {
        variants.put(from, model);
      }
      from += years;
    }
    return FeatureChances.of(feature, variants, pairs.size());
  }

  /** The logarithms of each pair's weight and chances together, not yet normalised. */
  double[] logs(List<Seen> seen) {
    double[] logs = new double[pairs.size()];
    for (int i = 0; i < logs.length; i++) {
      logs[i] = Math.log(weights[i]);
    }
    for (Seen one : seen) {
      FeatureChances known = of(one.feature());
      for (int i = 0; i < logs.length && !known.isEmpty(); i++) {
        logs[i] += Math.log(known.at(i, one.value()));
      }
    }
    return logs;
  }

  /** By feature, so that the order in which things were seen changes no digit. */
  private static List<Seen> inOrder(Collection<Seen> seen) {
    Map<String, Seen> byFeature = new TreeMap<>();
    for (Seen one : seen) {
      if (byFeature.put(one.feature().key(), one) != null) {
        throw new IllegalArgumentException("Seen twice: " + one.feature().key());
      }
    }
    return List.copyOf(byFeature.values());
  }
}
