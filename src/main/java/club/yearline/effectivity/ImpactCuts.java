package club.yearline.effectivity;

import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Cuts two states of a variant where either may change, so that their segments can be paired. */
final class ImpactCuts {

  private final @Nullable VariantModel old;
  private final @Nullable VariantModel now;
  private final String feature;

  ImpactCuts(@Nullable VariantModel old, @Nullable VariantModel now, String feature) {
    this.old = old;
    this.now = now;
    this.feature = feature;
  }

  void addTo(Series series, TreeSet<Serial> cuts) {
    models().flatMap(m -> m.timeline(feature).stream()).forEach(t -> t.addCuts(series, cuts));
    TreeSet<Serial> named = new TreeSet<>(cuts);
    models()
        .flatMap(m -> m.production().neighbours(series).stream())
        .forEach(
            block -> {
              named.add(block.first());
              named.add(block.end().lastNamedBefore());
            });
    models()
        .flatMap(m -> m.production().blocks().stream())
        .filter(b -> b.series().key().equals(series.key()))
        .forEach(
            block -> {
              cuts.add(block.first());
              cuts.add(nextNamed(block.end(), named));
            });
  }

  private Stream<VariantModel> models() {
    return Stream.of(old, now).filter(Objects::nonNull);
  }

  /** After a block to 412 comes 413, and not a 412A of which nobody has heard. */
  private static Serial nextNamed(Serial end, TreeSet<Serial> named) {
    Serial plain = Serial.of(end.plainFloor());
    Serial next = named.ceiling(end);
    return next == null || plain.isBelow(next) ? plain : next;
  }
}
