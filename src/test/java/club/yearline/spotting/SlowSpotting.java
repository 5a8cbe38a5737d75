package club.yearline.spotting;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Possible;
import club.yearline.effectivity.Records;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.State;
import club.yearline.effectivity.Stretch;
import club.yearline.effectivity.Values;
import club.yearline.effectivity.Variant;
import club.yearline.effectivity.VariantModel;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A second evaluator of spotting: plain probabilities, whole tables, every expectation written out
 * as its definition reads. Only the answers themselves are the engine's.
 */
final class SlowSpotting {

  private final Records records;
  private final Catalogue catalogue;
  private final List<Variant> variants;

  SlowSpotting(Records records, Catalogue catalogue, List<Variant> variants) {
    this.records = records;
    this.catalogue = catalogue;
    this.variants = variants;
  }

  /** Variant key and year, as {@code v-1 1966}, with the prior, which sums to 1. */
  Map<String, Double> prior() {
    Map<String, Double> known = new LinkedHashMap<>();
    for (Variant variant : variants) {
      for (int year : model(variant).years()) {
        known.put(variant.key() + " " + year, airframes(variant, year));
      }
    }
    Map<String, Double> weights = new LinkedHashMap<>();
    for (Variant variant : variants) {
      for (int year : model(variant).years()) {
        double own = airframes(variant, year);
        weights.put(variant.key() + " " + year, own > 0 ? own : instead(variant, known));
      }
    }
    double sum = weights.values().stream().mapToDouble(w -> w).sum();
    weights.replaceAll((pair, weight) -> weight / sum);
    return weights;
  }

  private double airframes(Variant variant, int year) {
    return model(variant).airframes(year)
        + model(variant).airframes(null) / model(variant).years().length;
  }

  private double instead(Variant variant, Map<String, Double> known) {
    List<Double> family = new ArrayList<>();
    List<Double> all = new ArrayList<>();
    known.forEach(
        (pair, airframes) -> {
          Variant of = catalogue.variant(pair.split(" ")[0]).orElseThrow();
          if (airframes > 0) {
            all.add(airframes);
            if (of.family().equals(variant.family())) {
              family.add(airframes);
            }
          }
        });
    List<Double> from = family.isEmpty() ? all : family;
    return from.stream().mapToDouble(a -> a).average().orElse(1);
  }

  /** The values of a feature among the variants. */
  Set<String> values(Feature feature) {
    Set<String> values = new TreeSet<>();
    if (!feature.isNumber()) {
      feature.values().forEach(v -> values.add(v.key()));
      return values;
    }
    for (Variant variant : variants) {
      boolean applies = model(variant).timeline(feature.key()).isPresent();
      if (applies && model(variant).years().length > 0) {
        records.changes().stream()
            .filter(c -> c.feature().equals(feature.key()))
            .filter(c -> c.cutIn(variant.key()).isPresent())
            .forEach(c -> c.offering().forEach(o -> values.add(Values.canonical(o.value()))));
        records.retrofits().stream()
            .filter(r -> r.feature().equals(feature.key()) && r.variant().equals(variant.key()))
            .forEach(r -> values.add(Values.canonical(r.value())));
      }
    }
    return values;
  }

  /** P of every value at a position. */
  Map<String, Double> chances(Feature feature, Position position) {
    Set<String> values = values(feature);
    Map<String, Double> built = new LinkedHashMap<>();
    boolean belongs = model(position.variant()).timeline(feature.key()).isPresent();
    for (String value : values) {
      built.put(
          value, belongs ? built(answer(feature, position), value, values) : 1.0 / values.size());
    }
    Map<String, Double> chances = new LinkedHashMap<>();
    for (String value : values) {
      double x = feature.exchange().chance();
      if (belongs && isRetrofit(feature, value, position)) {
        x = Math.max(x, 0.1);
      }
      chances.put(value, (1 - x) * built.get(value) + x / values.size());
    }
    return chances;
  }

  private Answer answer(Feature feature, Position position) {
    return catalogue.expected(position).stream()
        .filter(a -> a.feature().key().equals(feature.key()))
        .findFirst()
        .orElseThrow();
  }

  private boolean isRetrofit(Feature feature, String value, Position position) {
    for (Retrofit retrofit : records.retrofits()) {
      if (retrofit.feature().equals(feature.key())
          && same(feature, retrofit.value(), value)
          && retrofit.fits(position)) {
        return true;
      }
    }
    return false;
  }

  private static boolean same(Feature feature, String one, String other) {
    return feature.isNumber()
        ? Values.number(one).orElseThrow().compareTo(Values.number(other).orElseThrow()) == 0
        : one.equals(other);
  }

  private static double built(Answer answer, String value, Set<String> values) {
    if (answer.state() == State.UNRECORDED) {
      return 1.0 / values.size();
    }
    if (answer.state() == State.SPLITS) {
      double all = answer.stretches().stream().mapToDouble(Stretch::airframes).sum();
      double sum = 0;
      for (Stretch stretch : answer.stretches()) {
        double weight = all > 0 ? stretch.airframes() / all : 1.0 / answer.stretches().size();
        sum += weight * built(stretch.answer(), value, values);
      }
      return sum;
    }
    double sum = 0;
    for (Possible possible : answer.possible()) {
      sum += offered(answer.feature(), possible, value, values) / answer.possible().size();
    }
    return sum;
  }

  private static double offered(
      Feature feature, Possible possible, String value, Set<String> values) {
    if (possible.isNothing()) {
      return 1.0 / values.size();
    }
    List<Offered> options =
        possible.offering().stream().filter(o -> o.fit() == Fit.OPTION).toList();
    int standards = possible.offering().size() - options.size();
    double rates = options.stream().mapToDouble(SlowSpotting::rate).sum();
    double capped = Math.min(rates, 0.75);
    for (Offered offered : possible.offering()) {
      if (same(feature, offered.value(), value)) {
        if (standards == 0) {
          return 1.0 / options.size();
        }
        return offered.fit() == Fit.STANDARD
            ? (1 - capped) / standards
            : rates == 0 ? 0 : rate(offered) / rates * capped;
      }
    }
    return 0;
  }

  private static double rate(Offered offered) {
    return offered.takeRate() == null ? 0.25 : offered.takeRate().doubleValue();
  }

  /** The shares after what was seen: products of plain probabilities. */
  Map<String, Double> shares(List<Seen> seen) {
    Map<String, Double> shares = prior();
    for (Seen one : seen) {
      if (!values(one.feature()).isEmpty()) {
        shares.replaceAll((pair, share) -> share * chance(pair, one));
      }
    }
    double sum = shares.values().stream().mapToDouble(s -> s).sum();
    shares.replaceAll((pair, share) -> share / sum);
    return shares;
  }

  double chance(String pair, Seen seen) {
    return chance(position(pair), seen);
  }

  double chance(Position position, Seen seen) {
    Set<String> values = values(seen.feature());
    return values.contains(seen.value())
        ? chances(seen.feature(), position).get(seen.value())
        : seen.feature().exchange().chance() / values.size();
  }

  /** Whether an airframe of the pair may have left the factory with the value. */
  boolean mayBeBuilt(String pair, Seen seen) {
    Position position = position(pair);
    Set<String> values = values(seen.feature());
    boolean belongs = model(position.variant()).timeline(seen.feature().key()).isPresent();
    return values.contains(seen.value())
        && (!belongs || built(answer(seen.feature(), position), seen.value(), values) > 0);
  }

  private Position position(String pair) {
    String[] words = pair.split(" ");
    return Position.of(catalogue.variant(words[0]).orElseThrow(), Integer.parseInt(words[1]));
  }

  /** Entropy now, less the mean of the entropy after each value, in bits. */
  double bits(Feature feature, Map<String, Double> shares) {
    Map<String, Map<String, Double>> chances = new LinkedHashMap<>();
    shares.keySet().forEach(pair -> chances.put(pair, divided(chances(feature, position(pair)))));
    double expected = 0;
    for (String value : values(feature)) {
      Map<String, Double> after = new LinkedHashMap<>(shares);
      after.replaceAll((pair, share) -> share * chances.get(pair).get(value));
      double chance = after.values().stream().mapToDouble(s -> s).sum();
      after.replaceAll((pair, share) -> chance == 0 ? 0 : share / chance);
      expected += chance * entropy(after);
    }
    return entropy(shares) - expected;
  }

  private static Map<String, Double> divided(Map<String, Double> chances) {
    double sum = chances.values().stream().mapToDouble(c -> c).sum();
    chances.replaceAll((value, chance) -> chance / sum);
    return chances;
  }

  private static double entropy(Map<String, Double> shares) {
    return shares.values().stream()
        .mapToDouble(p -> p == 0 ? 0 : -p * Math.log(p) / Math.log(2))
        .sum();
  }

  private VariantModel model(Variant variant) {
    return catalogue.model(variant.key()).orElseThrow();
  }
}
