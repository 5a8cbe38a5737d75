package club.yearline.expected;

import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Possible;
import club.yearline.web.Phrases;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Values as shown: labels, numbers with their unit, standard before option. */
final class Items {

  private final Catalogue catalogue;
  private final Links links;
  private final Wording wording;
  private final Phrases phrases;
  private final Marks marks;

  Items(Links links, Wording wording, Phrases phrases, Marks marks) {
    this.catalogue = links.reading().catalogue();
    this.links = links;
    this.wording = wording;
    this.phrases = phrases;
    this.marks = marks;
  }

  /** The values that the possible offerings hold, each once. */
  List<Row.Item> of(Feature feature, List<Possible> possible, boolean cues) {
    Set<Row.Item> items = new LinkedHashSet<>();
    for (Possible one : possible) {
      items.addAll(of(feature, one, cues));
    }
    return List.copyOf(items);
  }

  /** The values of one offering. */
  List<Row.Item> of(Feature feature, Possible possible, boolean cues) {
    if (possible.isNothing()) {
      return List.of(nothing());
    }
    return inOrder(possible).map(o -> item(feature, o, cues)).toList();
  }

  /** The item for "nothing recorded". */
  Row.Item nothing() {
    return new Row.Item(phrases.of("expected.nothing"), null, null, null, null);
  }

  private static Stream<Offered> inOrder(Possible possible) {
    return possible.offering().stream().sorted(Comparator.comparing(Offered::fit));
  }

  private Row.Item item(Feature feature, Offered offered, boolean cues) {
    Optional<FeatureValue> value = feature.value(offered.value());
    return new Row.Item(
        wording.value(feature, offered.value()),
        Marks.style(offered.fit()),
        fit(offered),
        value.map(FeatureValue::picture).map(this::picture).orElse(null),
        cues ? value.map(FeatureValue::cue).orElse(null) : null);
  }

  private String fit(Offered offered) {
    BigDecimal rate = offered.takeRate();
    return rate == null
        ? marks.word(offered.fit())
        : phrases.of(
            "expected.fit.rate",
            marks.word(offered.fit()),
            rate.movePointRight(2).stripTrailingZeros().toPlainString());
  }

  private @Nullable String picture(String name) {
    return catalogue.picture(name).map(links::picture).orElse(null);
  }
}
