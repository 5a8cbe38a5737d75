package club.yearline.browse;

import club.yearline.browse.FeaturePage.ChangeItem;
import club.yearline.browse.FeaturePage.CutInLine;
import club.yearline.browse.FeaturePage.RetrofitItem;
import club.yearline.browse.FeaturePage.ValueCard;
import club.yearline.catalog.Chapters;
import club.yearline.catalog.FindingsOf;
import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Picture;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.Variant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Makes what a feature's page shows. */
@Component
class FeatureViews {

  private final Wording wording;
  private final RecordTexts texts;
  private final Chapters chapters;
  private final FindingsOf findings;

  FeatureViews(Wording wording, RecordTexts texts, Chapters chapters, FindingsOf findings) {
    this.wording = wording;
    this.texts = texts;
    this.chapters = chapters;
    this.findings = findings;
  }

  /**
   * A feature's page.
   *
   * @param family key of the one family to show; null for all, or for the first if all together
   *     would make too heavy a page
   */
  FeaturePage page(Feature feature, @Nullable String family, Links links) {
    List<Line> all = Line.of(feature, links.reading().catalogue());
    FamilyChoice choice = FamilyChoice.of(all, family, feature, links);
    List<Line> lines = choice.lines();
    List<Change> changes = ChangeOrder.merged(lines);
    return new FeaturePage(
        feature.name(),
        feature.description(),
        (feature.chapter() + " " + chapters.title(feature.chapter()).orElse("")).strip(),
        feature.unit(),
        "records.visibility." + feature.visibility().code(),
        "records.exchange." + feature.exchange().code(),
        feature.values().stream().map(v -> card(v, links)).toList(),
        choice.links(),
        FeatureDrawing.of(feature, lines, links, wording, texts).orElse(null),
        new AnswerRows(links, wording, texts).of(lines),
        changes.stream().map(c -> item(feature, c, lines, links)).toList(),
        lines.stream()
            .flatMap(l -> l.timeline().retrofits().stream())
            .map(r -> item(feature, r, links))
            .toList(),
        CitationLine.of(feature.citations(), links),
        findings.feature(links.reading().catalogue(), feature.key()).stream()
            .map(f -> FindingLine.of(f, texts))
            .toList());
  }

  private static ValueCard card(FeatureValue value, Links links) {
    Optional<Picture> picture =
        Optional.ofNullable(value.picture()).flatMap(links.reading().catalogue()::picture);
    return new ValueCard(
        value.label(),
        value.cue(),
        picture.map(links::picture).orElse(null),
        picture.isEmpty() ? null : value.pictureCredit(),
        picture.map(p -> p.mediaType().equals("image/svg+xml")).orElse(false));
  }

  private ChangeItem item(Feature feature, Change change, List<Line> lines, Links links) {
    return new ChangeItem(
        change.title(),
        links.change(change.key()),
        wording.offering(feature, change.offering()),
        cutIns(change, lines),
        CitationLine.of(change.citations(), links),
        change.citations().stream().anyMatch(c -> !c.supports()));
  }

  /** Variants with the same words stand together, in the order of the drawing. */
  private List<CutInLine> cutIns(Change change, List<Line> lines) {
    Map<String, List<String>> variants = new LinkedHashMap<>();
    for (Line line : lines) {
      Optional<CutIn> cutIn = change.cutIn(line.variant().key());
      cutIn.ifPresent(
          c ->
              variants
                  .computeIfAbsent(wording.cutIn(c), k -> new ArrayList<>())
                  .add(line.variant().designation()));
    }
    return variants.entrySet().stream()
        .map(e -> new CutInLine(String.join(", ", e.getValue()), e.getKey()))
        .toList();
  }

  private RetrofitItem item(Feature feature, Retrofit retrofit, Links links) {
    String variant = retrofit.variant();
    return new RetrofitItem(
        retrofit.key(),
        wording.value(feature, retrofit.value()),
        links.reading().catalogue().variant(variant).map(Variant::designation).orElse(variant),
        links.variant(variant),
        new Ranges(wording, texts).of(retrofit),
        retrofit.document(),
        links.reading().catalogue().isMandatory(retrofit),
        retrofit.note(),
        CitationLine.of(retrofit.citations(), links));
  }
}
