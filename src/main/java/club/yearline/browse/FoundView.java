package club.yearline.browse;

import club.yearline.catalog.Closeness;
import club.yearline.catalog.Found;
import club.yearline.catalog.Meaning;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.SerialMatch;
import club.yearline.effectivity.SoldName;
import club.yearline.effectivity.Variant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What was found, in words and with addresses, grouped by kind. */
record FoundView(Found found, Catalogue catalogue, Links links, Words words, Wording wording) {

  /** Hits of one kind. */
  record Group(String title, List<Row> rows) {}

  /** One hit. */
  record Row(String title, String detail, String href) {}

  List<Group> groups() {
    Map<String, List<Row>> groups = new LinkedHashMap<>();
    for (Found.Hit hit : found.hits()) {
      groups
          .computeIfAbsent(kind(hit.meaning()), k -> new ArrayList<>())
          .add(row(hit.meaning(), hit.closeness()));
    }
    return groups.entrySet().stream()
        .map(e -> new Group(words.say("find.kind." + e.getKey()), e.getValue()))
        .toList();
  }

  /** What was understood, and how sure the list is. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    if (!found.unread().isEmpty()) {
      notes.add(words.say("find.unread", String.join("”, “", found.unread())));
    }
    if (!found.isEmpty()) {
      Closeness best = found.hits().get(0).closeness();
      if (best == Closeness.OTHER_YEAR) {
        notes.add(words.say("find.other-year", String.valueOf(found.year())));
      } else if (best == Closeness.NEAR) {
        notes.add(words.say("find.near"));
      }
    } else if (found.year() != null) {
      notes.add(words.say("find.year", found.year()));
    }
    if (found.more()) {
      notes.add(words.say("find.more", found.hits().size()));
    }
    return notes;
  }

  /** The page that answers one meaning. */
  String href(Meaning meaning) {
    if (meaning instanceof Meaning.OfSerial serial) {
      return serialHref(serial);
    } else if (meaning instanceof Meaning.OfYear year) {
      return links.expected(year.variant().key(), year.year(), null);
    } else if (meaning instanceof Meaning.OfVariant variant) {
      return links.variant(variant.variant().key());
    } else if (meaning instanceof Meaning.OfFamily family) {
      return links.family(family.family().key());
    } else if (meaning instanceof Meaning.OfMaker maker) {
      List<Family> families = maker.families();
      return families.size() == 1 ? links.family(families.get(0).key()) : links.families();
    } else if (meaning instanceof Meaning.OfFeature feature) {
      return links.feature(feature.feature().key());
    } else if (meaning instanceof Meaning.OfValue value) {
      return links.feature(value.feature().key());
    } else if (meaning instanceof Meaning.OfRetrofit retrofit) {
      return links.feature(retrofit.retrofit().feature());
    } else if (meaning instanceof Meaning.OfSource source) {
      return links.source(source.source().key());
    }
    throw new IllegalStateException("A meaning without a page: " + meaning);
  }

  private String serialHref(Meaning.OfSerial serial) {
    long readings =
        found.hits().stream().filter(h -> h.meaning() instanceof Meaning.OfSerial).count();
    String text = serial.match().text();
    SerialBlock block = serial.block();
    return readings == 1 || block == null
        ? links.serial(text)
        : links.expected(block.variant(), block.year(), text);
  }

  private static String kind(Meaning meaning) {
    if (meaning instanceof Meaning.OfSerial serial) {
      return serial.outsideBlocks() ? "serial-outside" : "serial";
    }
    return meaning.getClass().getSimpleName().substring(2).toLowerCase(Locale.ROOT);
  }

  private Row row(Meaning meaning, Closeness closeness) {
    String href = href(meaning);
    if (meaning instanceof Meaning.OfSerial serial) {
      return new Row(serial.match().text(), serialDetail(serial), href);
    } else if (meaning instanceof Meaning.OfYear year) {
      String title = words.say("variant-year", year.variant().designation(), year.year());
      return new Row(title, familyName(year.variant()), href);
    } else if (meaning instanceof Meaning.OfVariant variant) {
      return new Row(variant.variant().designation(), variantDetail(variant.variant()), href);
    } else if (meaning instanceof Meaning.OfFamily family) {
      return new Row(family.family().name(), family.family().maker(), href);
    } else if (meaning instanceof Meaning.OfMaker maker) {
      return new Row(maker.maker(), words.count("families", maker.families().size()), href);
    } else if (meaning instanceof Meaning.OfFeature feature) {
      return new Row(feature.feature().name(), or(feature.feature().description()), href);
    } else if (meaning instanceof Meaning.OfValue value) {
      return new Row(value.value().label(), value.feature().name(), href);
    } else if (meaning instanceof Meaning.OfRetrofit retrofit) {
      return new Row(retrofit.retrofit().document(), retrofitDetail(retrofit), href);
    } else if (meaning instanceof Meaning.OfSource source) {
      return new Row(
          source.source().source().title(), or(source.source().source().identifier()), href);
    }
    throw new IllegalStateException("A meaning without words: " + meaning + " " + closeness);
  }

  private String serialDetail(Meaning.OfSerial serial) {
    SerialBlock block = serial.block();
    if (block != null) {
      return allotted(block);
    }
    SerialMatch match = serial.match();
    List<String> nearest =
        Stream.of(nearest("find.below", match.below()), nearest("find.above", match.above()))
            .filter(s -> !s.isEmpty())
            .toList();
    String series = catalogue.family(match.series().family()).map(Family::name).orElse("");
    return words.say("find.outside", series, String.join("; ", nearest));
  }

  private String nearest(String key, @Nullable SerialBlock block) {
    return block == null
        ? ""
        : words.say(key, SerialRange.of(block, words, wording), allotted(block));
  }

  private String allotted(SerialBlock block) {
    String designation =
        catalogue.variant(block.variant()).map(Variant::designation).orElse(block.variant());
    return block.year() == null
        ? words.say("find.no-year", designation)
        : words.say("variant-year", designation, block.year());
  }

  private String variantDetail(Variant variant) {
    String names =
        variant.names().stream().map(SoldName::name).distinct().collect(Collectors.joining(", "));
    String years = Production.of(variant).years(wording);
    return Stream.of(names, years).filter(s -> !s.isEmpty()).collect(Collectors.joining(" · "));
  }

  private String familyName(Variant variant) {
    return catalogue.family(variant.family()).map(Family::name).orElse("");
  }

  private String retrofitDetail(Meaning.OfRetrofit meaning) {
    String feature = meaning.retrofit().feature();
    String variant = meaning.retrofit().variant();
    return words.say(
        "find.retrofit",
        catalogue.feature(feature).map(f -> f.name()).orElse(feature),
        catalogue.variant(variant).map(Variant::designation).orElse(variant));
  }

  private static String or(@Nullable String text) {
    return text == null ? "" : text;
  }
}
