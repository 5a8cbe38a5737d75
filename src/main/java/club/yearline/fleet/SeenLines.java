package club.yearline.fleet;

import club.yearline.catalog.Chapters;
import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Picture;
import club.yearline.fleet.AirframeView.SeenChapter;
import club.yearline.fleet.AirframeView.SeenFeature;
import club.yearline.fleet.AirframeView.SeenLine;
import club.yearline.fleet.AirframeView.SeenPhoto;
import club.yearline.fleet.Comparison.Finding;
import club.yearline.web.Phrases;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What was seen on one airframe, in words and with addresses. */
record SeenLines(
    Links links,
    Airframe airframe,
    List<PhotographLine> photographs,
    String owner,
    Wording wording,
    Phrases phrases) {

  List<SeenChapter> byChapter(List<Finding> findings, Chapters chapters) {
    Map<String, List<SeenFeature>> byCode = new LinkedHashMap<>();
    for (Finding finding : findings) {
      byCode
          .computeIfAbsent(finding.feature().chapter(), k -> new java.util.ArrayList<>())
          .add(feature(finding));
    }
    return byCode.entrySet().stream()
        .map(
            e ->
                new SeenChapter(
                    e.getKey(),
                    chapters.title(e.getKey()).orElse(phrases.of("fleet.chapter.other")),
                    e.getValue()))
        .toList();
  }

  /** Where a difference is read on. */
  FleetView.Spot spot(Finding finding) {
    return new FleetView.Spot(
        finding.feature().name(), "#f-" + finding.feature().key(), finding.match().code());
  }

  private SeenFeature feature(Finding finding) {
    Feature feature = finding.feature();
    List<SeenLine> lines = finding.seen().stream().map(o -> line(feature, o)).toList();
    return new SeenFeature(
        "f-" + feature.key(),
        feature.name(),
        links.feature(feature.key()),
        finding.match().mark(),
        phrases.of("fleet.match." + finding.match().code()),
        picture(feature, finding.latest().value()),
        finding.match() == Match.AS_BUILT ? null : expected(finding.expected()),
        lines.get(0),
        lines.subList(1, lines.size()),
        links.root() + "/fleet/" + airframe.id() + "/observe?feature=" + feature.key());
  }

  private String expected(@Nullable Answer answer) {
    return answer == null ? phrases.of("fleet.expected.none") : wording.answer(answer);
  }

  private @Nullable String picture(Feature feature, String value) {
    return feature
        .value(value)
        .map(FeatureValue::picture)
        .flatMap(name -> links.reading().catalogue().picture(name))
        .map((Picture p) -> links.picture(p))
        .orElse(null);
  }

  private SeenLine line(Feature feature, Observation seen) {
    String who = seen.observer() == null ? owner : seen.observer();
    return new SeenLine(
        seen.id(),
        wording.value(feature, seen.value()),
        phrases.of("fleet.seen-by", seen.on(), who),
        seen.note(),
        photographs.stream()
            .filter(p -> p.observation() == seen.id())
            .map(p -> photo(feature, seen, p))
            .toList());
  }

  private SeenPhoto photo(Feature feature, Observation seen, PhotographLine line) {
    String href = links.root() + "/fleet/" + airframe.id() + "/photographs/" + line.id();
    return new SeenPhoto(
        href, href + "/small", phrases.of("fleet.photograph-of", feature.name(), seen.on()));
  }
}
