package club.yearline.effectivity;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Which answers differ between two states of a catalogue (domain section 7). */
public final class Impact {

  private final Catalogue before;
  private final Catalogue after;
  private final List<ImpactRow> rows = new ArrayList<>();

  private Impact(Catalogue before, Catalogue after) {
    this.before = before;
    this.after = after;
  }

  /**
   * Every stretch of positions whose answer differs, by variant, then feature, then position: years
   * without blocks first, then serials in their order.
   */
  public static List<ImpactRow> between(Catalogue before, Catalogue after) {
    Impact impact = new Impact(before, after);
    TreeMap<String, Variant> variants = new TreeMap<>();
    before.records().variants().forEach(v -> variants.put(v.key(), v));
    after.records().variants().forEach(v -> variants.put(v.key(), v));
    variants.keySet().forEach(impact::compare);
    return List.copyOf(impact.rows);
  }

  private void compare(String variant) {
    VariantModel old = before.model(variant).orElse(null);
    VariantModel now = after.model(variant).orElse(null);
    if (old == now) {
      return;
    }
    Map<String, Feature> features = new TreeMap<>();
    addFeatures(old, features);
    addFeatures(now, features);
    for (Feature feature : features.values()) {
      rows.addAll(new FeatureImpact(old, now, feature).rows());
    }
  }

  private static void addFeatures(@Nullable VariantModel model, Map<String, Feature> features) {
    if (model != null) {
      model.timelines().forEach(t -> features.putIfAbsent(t.feature().key(), t.feature()));
    }
  }
}
