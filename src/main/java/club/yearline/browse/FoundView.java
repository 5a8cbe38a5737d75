package club.yearline.browse;

import club.yearline.catalog.Closeness;
import club.yearline.catalog.Found;
import club.yearline.catalog.Links;
import club.yearline.catalog.Meaning;
import club.yearline.catalog.Wording;
import club.yearline.citation.Source;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.SerialMatch;
import club.yearline.effectivity.SoldName;
import club.yearline.effectivity.Variant;
import club.yearline.fleet.Registered;
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
      groups.computeIfAbsent(kind(hit.meaning()), k -> new ArrayList<>()).add(row(hit.meaning()));
    }
    return groups.entrySet().stream()
        .map(e -> new Group(words.say("find.kind." + e.getKey()), e.getValue()))
        .toList();
  }

  /** Airframes of the register. */
  Group group(List<Registered> marked) {
    return new Group(words.say("find.kind.registered"), marked.stream().map(this::row).toList());
  }

  /** The page of an airframe of the register. */
  String href(Registered airframe) {
    return links.root() + "/fleet/" + airframe.id();
  }

  private Row row(Registered airframe) {
    String designation =
        catalogue.variant(airframe.variant()).map(Variant::designation).orElse(airframe.variant());
    String what =
        airframe.year() == null
            ? designation
            : words.say("variant-year", designation, airframe.year());
    String whose = words.say(airframe.own() ? "find.own" : "find.shared");
    String detail =
        Stream.of(or(airframe.serial()), what, whose)
            .filter(s -> !s.isEmpty())
            .collect(Collectors.joining(" · "));
    return new Row(or(airframe.registration()), detail, href(airframe));
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
    return row(meaning).href();
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

  private Row row(Meaning meaning) {
    if (meaning instanceof Meaning.OfSerial serial) {
      return new Row(serial.match().text(), serialDetail(serial), serialHref(serial));
    } else if (meaning instanceof Meaning.OfYear year) {
      return row(year.variant(), year.year());
    } else if (meaning instanceof Meaning.OfVariant variant) {
      return row(variant.variant());
    } else if (meaning instanceof Meaning.OfFamily family) {
      return row(family.family());
    } else if (meaning instanceof Meaning.OfMaker maker) {
      return row(maker);
    } else {
      return recordRow(meaning);
    }
  }

  private Row recordRow(Meaning meaning) {
    if (meaning instanceof Meaning.OfFeature found) {
      Feature feature = found.feature();
      return new Row(feature.name(), or(feature.description()), links.feature(feature.key()));
    } else if (meaning instanceof Meaning.OfValue found) {
      Feature feature = found.feature();
      return new Row(found.value().label(), feature.name(), links.feature(feature.key()));
    } else if (meaning instanceof Meaning.OfRetrofit found) {
      Retrofit retrofit = found.retrofit();
      return new Row(
          retrofit.document(), retrofitDetail(retrofit), links.feature(retrofit.feature()));
    } else if (meaning instanceof Meaning.OfSource found) {
      Source source = found.source().source();
      return new Row(source.title(), or(source.identifier()), links.source(source.key()));
    }
    throw new IllegalStateException("A meaning without a page: " + meaning);
  }

  private Row row(Variant variant, int year) {
    String title = words.say("variant-year", variant.designation(), year);
    return new Row(title, familyName(variant), links.expected(variant.key(), year, null));
  }

  private Row row(Variant variant) {
    return new Row(variant.designation(), variantDetail(variant), links.variant(variant.key()));
  }

  private Row row(Family family) {
    return new Row(family.name(), family.maker(), links.family(family.key()));
  }

  private Row row(Meaning.OfMaker found) {
    List<Family> families = found.families();
    String href = families.size() == 1 ? links.family(families.get(0).key()) : links.families();
    return new Row(found.maker(), words.count("families", families.size()), href);
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

  private String retrofitDetail(Retrofit retrofit) {
    return words.say(
        "find.retrofit",
        catalogue.feature(retrofit.feature()).map(Feature::name).orElse(retrofit.feature()),
        catalogue.variant(retrofit.variant()).map(Variant::designation).orElse(retrofit.variant()));
  }

  private static String or(@Nullable String text) {
    return text == null ? "" : text;
  }
}
