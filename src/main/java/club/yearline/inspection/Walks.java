package club.yearline.inspection;

import club.yearline.catalog.Chapters;
import club.yearline.catalog.Links;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureValue;
import club.yearline.spotting.Seen;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Lays out the walk-around list of a claim. */
final class Walks {

  private final Chapters chapters;
  private final Links links;
  private final Phrases phrases;
  private final Sent sent;
  private final Map<String, Walk.Found> found;

  Walks(Chapters chapters, Links links, Phrases phrases, Sent sent, Map<String, Walk.Found> found) {
    this.chapters = chapters;
    this.links = links;
    this.phrases = phrases;
    this.sent = sent;
    this.found = found;
  }

  /** Where a feature stands on the page. */
  static String id(Feature feature) {
    return "f-" + feature.key();
  }

  /** The variant's features by chapter, then whatever else was seen. */
  Walk of(List<Answer> expected) {
    Map<String, List<Walk.Entry>> byChapter = new LinkedHashMap<>();
    List<String> own = new ArrayList<>();
    for (Answer answer : expected) {
      Feature feature = answer.feature();
      own.add(feature.key());
      byChapter.computeIfAbsent(feature.chapter(), k -> new ArrayList<>()).add(entry(feature));
    }
    List<Walk.Group> groups = new ArrayList<>();
    byChapter.forEach((code, entries) -> groups.add(group(code, entries)));
    List<Walk.Entry> others =
        sent.seen().stream()
            .map(Seen::feature)
            .filter(f -> !own.contains(f.key()))
            .map(this::entry)
            .toList();
    if (!others.isEmpty()) {
      groups.add(
          new Walk.Group("c-others", "#c-others", "–", phrases.of("inspect.others"), others));
    }
    return new Walk(groups);
  }

  private Walk.Group group(String code, List<Walk.Entry> entries) {
    String title = chapters.title(code).orElseGet(() -> phrases.of("expected.chapter.other"));
    return new Walk.Group("c-" + code, "#c-" + code, code, title, entries);
  }

  private Walk.Entry entry(Feature feature) {
    String value = sent.value(feature);
    String typed = sent.typed().get(feature.key());
    return new Walk.Entry(
        id(feature),
        feature.key(),
        feature.name(),
        links.feature(feature.key()),
        phrases.of("inspect.seen." + feature.visibility().code()),
        "o." + feature.key(),
        feature.isNumber() ? unit(feature) : null,
        feature.isNumber() ? (typed != null ? typed : value == null ? "" : value) : null,
        typed == null ? null : phrases.of("inspect.number.fault", typed),
        feature.values().stream().map(v -> option(feature, v, v.key().equals(value))).toList(),
        value == null,
        "photo." + feature.key(),
        found.get(feature.key()));
  }

  private Walk.Option option(Feature feature, FeatureValue value, boolean chosen) {
    return new Walk.Option(
        id(feature) + "-" + value.key(),
        value.key(),
        value.label(),
        value.cue(),
        picture(value),
        chosen);
  }

  private @Nullable String picture(FeatureValue value) {
    Catalogue catalogue = links.reading().catalogue();
    return value.picture() == null
        ? null
        : catalogue.picture(value.picture()).map(links::picture).orElse(null);
  }

  private static String unit(Feature feature) {
    String unit = feature.unit();
    return unit == null || unit.equals("count") ? "" : unit;
  }
}
