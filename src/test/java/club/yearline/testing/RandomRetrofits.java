package club.yearline.testing;

import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.Serial;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.Variant;
import java.util.ArrayList;
import java.util.List;

/** Random retrofits, bounded by years, by serials, by both or by neither. */
final class RandomRetrofits {

  private final Dice dice;
  private final Evidence evidence;
  private final List<Variant> variants;
  private final List<Series> series;

  RandomRetrofits(Dice dice, Evidence evidence, List<Variant> variants, List<Series> series) {
    this.dice = dice;
    this.evidence = evidence;
    this.variants = variants;
    this.series = series;
  }

  List<Retrofit> of(List<Feature> features) {
    List<Retrofit> retrofits = new ArrayList<>();
    int count = dice.between(0, 3);
    for (int i = 0; i < count; i++) {
      retrofits.add(retrofit("retrofit-" + i, dice.pick(features), dice.pick(variants)));
    }
    return retrofits;
  }

  private Retrofit retrofit(String key, Feature feature, Variant variant) {
    int year = dice.between(1958, 1976);
    int ordinal = dice.between(0, 50);
    Series own =
        dice.pick(series.stream().filter(s -> s.family().equals(variant.family())).toList());
    boolean serials = dice.chance(0.5);
    return new Retrofit(
        key,
        feature.key(),
        dice.pick(RandomChanges.valuesOf(feature)),
        variant.key(),
        dice.maybe(0.5, year),
        dice.maybe(0.5, year + dice.between(0, 6)),
        serials ? own.key() : null,
        serials ? own.show(Serial.of(ordinal)) : null,
        serials ? dice.maybe(0.5, own.show(Serial.of(ordinal + dice.between(0, 9)))) : null,
        "SB-" + dice.between(1, 99),
        evidence.text(),
        evidence.citations(null));
  }
}
