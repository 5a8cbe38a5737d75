package club.yearline.api;

import club.yearline.effectivity.Catalogue;
import club.yearline.spotting.Misread;
import club.yearline.spotting.Told;
import java.util.List;

/** Observations in the body of a question: a feature and the value seen. */
final class Observations {

  private static final String MEMBER = "observations";

  private Observations() {}

  /** The member {@code observations}, each a feature and a value. */
  static List<Told.Pairing> read(Body body) {
    return body.objects(
        MEMBER,
        (one, index) -> {
          one.of("feature", "value");
          return new Told.Pairing(one.needed("feature"), one.neededValue("value"));
        });
  }

  /** What was seen; what cannot be counted is at fault. */
  static Told told(Catalogue catalogue, List<Told.Pairing> pairings, Body.Faults faults) {
    Told told = Told.of(catalogue, pairings);
    told.misread().forEach(m -> add(m, faults));
    return told;
  }

  private static void add(Misread misread, Body.Faults faults) {
    if (misread.why() == Misread.Why.TOO_MANY) {
      faults.add(MEMBER, "misread.too-many", Told.MOST);
      return;
    }
    String member = misread.ofFeature() ? "feature" : "value";
    faults.add(
        MEMBER + "[" + misread.index() + "]." + member,
        "misread." + misread.why().code(),
        misread.text(),
        misread.feature() == null ? "" : misread.feature().key(),
        String.join(", ", misread.known()));
  }

  /** Keys of features; any other is at fault. */
  static void checkFeatures(
      Catalogue catalogue, List<String> keys, String member, Body.Faults faults) {
    for (int i = 0; i < keys.size(); i++) {
      if (catalogue.feature(keys.get(i)).isEmpty()) {
        faults.add(member + "[" + i + "]", "misread.feature", keys.get(i), "", "");
      }
    }
  }
}
