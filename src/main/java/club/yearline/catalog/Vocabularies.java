package club.yearline.catalog;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Records;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.SourceEntry;
import club.yearline.effectivity.Variant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** The words of catalogues, gathered once for each state. */
final class Vocabularies {

  private static final PerCatalogue<Vocabulary> GATHERED =
      new PerCatalogue<>(c -> new Vocabulary(gather(c.records())));

  private Vocabularies() {}

  static Vocabulary of(Catalogue catalogue) {
    return GATHERED.of(catalogue);
  }

  private static List<Named> gather(Records records) {
    List<Named> named = new ArrayList<>();
    records.variants().forEach(v -> addVariant(v, named));
    records.families().forEach(f -> addFamily(f, named));
    makers(records)
        .forEach((maker, of) -> named.add(Named.of(new Meaning.OfMaker(maker, of), maker)));
    records.features().forEach(f -> addFeature(f, named));
    for (Retrofit retrofit : records.retrofits()) {
      named.add(Named.of(new Meaning.OfRetrofit(retrofit), retrofit.document()));
    }
    records.sources().forEach(s -> addSource(s, named));
    return named;
  }

  private static void addVariant(Variant variant, List<Named> named) {
    Meaning meaning = new Meaning.OfVariant(variant);
    Set<String> names = new TreeSet<>();
    variant.names().forEach(n -> names.add(n.name()));
    names.remove(variant.designation());
    named.add(Named.of(meaning, variant.designation()));
    names.forEach(name -> named.add(Named.of(meaning, name)));
    // "LA-2B Turnstone": the designation beside a name it was sold under.
    names.forEach(name -> named.add(Named.of(meaning, variant.designation() + " " + name)));
  }

  private static void addFamily(Family family, List<Named> named) {
    Meaning meaning = new Meaning.OfFamily(family);
    named.add(new Named(meaning, family.name(), family.maker()));
    if (family.typeCertificate() != null) {
      named.add(Named.of(meaning, family.typeCertificate()));
    }
  }

  private static Map<String, List<Family>> makers(Records records) {
    Map<String, List<Family>> makers = new LinkedHashMap<>();
    for (Family family : records.families()) {
      makers.computeIfAbsent(family.maker(), k -> new ArrayList<>()).add(family);
    }
    return makers;
  }

  private static void addFeature(Feature feature, List<Named> named) {
    named.add(Named.of(new Meaning.OfFeature(feature), feature.name()));
    for (FeatureValue value : feature.values()) {
      named.add(new Named(new Meaning.OfValue(feature, value), value.label(), feature.name()));
    }
  }

  private static void addSource(SourceEntry source, List<Named> named) {
    Meaning meaning = new Meaning.OfSource(source);
    named.add(Named.of(meaning, source.source().title()));
    if (source.source().identifier() != null) {
      named.add(Named.of(meaning, source.source().identifier()));
    }
  }
}
