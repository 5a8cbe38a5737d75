package club.yearline.quiz;

import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Values;
import java.util.stream.Collectors;

/** How options read, as far as records name them: two that read the same are no choice. */
final class Labels {

  private Labels() {}

  static String of(Claim claim) {
    if (claim instanceof Claim.Has c) {
      return place(c.at());
    }
    if (claim instanceof Claim.Became c) {
      return c.feature().name()
          + ": "
          + value(c.feature(), c.from())
          + ", "
          + value(c.feature(), c.to());
    }
    if (claim instanceof Claim.InOrder c) {
      return c.arrivals().stream()
          .map(a -> a.feature().name() + ": " + value(a.feature(), a.value()))
          .collect(Collectors.joining(", "));
    }
    if (claim instanceof Claim.Odd c) {
      return place(c.place());
    }
    if (claim instanceof Claim.Settles c) {
      return value(c.feature(), c.value());
    }
    return claim instanceof Claim.Mixes ? "mixes" : "lacks";
  }

  static String place(Position at) {
    return at.variant().designation() + " " + (at.serial() == null ? at.year() : at.serialText());
  }

  static String value(Feature feature, String value) {
    return feature.values().stream()
        .filter(v -> Values.canonical(v.key()).equals(value))
        .map(FeatureValue::label)
        .findFirst()
        .orElse(value);
  }
}
