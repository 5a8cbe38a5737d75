package club.yearline.browse;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.SourceEntry;
import club.yearline.effectivity.Variant;

/**
 * Names entries for people, and says on which page each is shown.
 *
 * @param catalogue where entries that have no name of their own find one
 */
record EntryNames(Catalogue catalogue, RecordTexts texts) {

  /** The name of an entry. */
  String name(Entry entry) {
    if (entry instanceof Family family) {
      return family.name();
    }
    if (entry instanceof Variant variant) {
      return variant.designation();
    }
    if (entry instanceof Feature feature) {
      return feature.name();
    }
    if (entry instanceof Change change) {
      return texts.get("part.of", feature(change.feature()), change.title());
    }
    if (entry instanceof Retrofit retrofit) {
      return texts.get("name.retrofit", retrofit.document(), feature(retrofit.feature()));
    }
    if (entry instanceof SerialBlock block) {
      String last = block.lastSerial();
      return last == null
          ? texts.get("range.from", block.firstSerial())
          : texts.message("wording.range", block.firstSerial(), last);
    }
    return entry instanceof SourceEntry source ? source.source().title() : entry.key();
  }

  private String feature(String key) {
    return catalogue.feature(key).map(Feature::name).orElse(key);
  }

  /** The page that shows an entry. */
  String path(Entry entry) {
    if (entry instanceof Series series) {
      return "/families/" + series.family();
    }
    if (entry instanceof SerialBlock block) {
      return "/variants/" + block.variant();
    }
    if (entry instanceof Retrofit retrofit) {
      return "/features/" + retrofit.feature();
    }
    return "/" + entry.kind().resource() + "/" + entry.key();
  }
}
