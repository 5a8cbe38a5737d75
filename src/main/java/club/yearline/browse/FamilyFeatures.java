package club.yearline.browse;

import club.yearline.catalog.Chapters;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Timeline;
import club.yearline.effectivity.Variant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The features of a family by chapter. */
final class FamilyFeatures {

  private FamilyFeatures() {}

  /** A chapter of the parts book and its features. */
  record Chapter(String code, String title, List<Row> features) {}

  /** A feature and how many changes of it are recorded in the family. */
  record Row(String name, String href, String changes) {}

  static List<Chapter> of(FamilyView view, Chapters chapters) {
    Map<String, Feature> features = new HashMap<>();
    Map<String, Set<String>> changes = new HashMap<>();
    for (Variant variant : view.variants()) {
      for (Timeline timeline : view.model(variant).timelines()) {
        Feature feature = timeline.feature();
        features.put(feature.key(), feature);
        Set<String> keys = changes.computeIfAbsent(feature.key(), k -> new HashSet<>());
        timeline.changes().stream().map(Change::key).forEach(keys::add);
      }
    }
    Map<String, List<Row>> byChapter = new TreeMap<>();
    features.values().stream()
        .sorted(Comparator.comparing(Feature::name).thenComparing(Feature::key))
        .forEach(
            f ->
                byChapter
                    .computeIfAbsent(f.chapter(), k -> new ArrayList<>())
                    .add(row(f, changes.getOrDefault(f.key(), Set.of()).size(), view)));
    return byChapter.entrySet().stream()
        .map(e -> new Chapter(e.getKey(), chapters.title(e.getKey()).orElse(""), e.getValue()))
        .toList();
  }

  private static Row row(Feature feature, int changes, FamilyView view) {
    return new Row(
        feature.name(),
        view.links().feature(feature.key()),
        view.words().count("changes", changes));
  }
}
