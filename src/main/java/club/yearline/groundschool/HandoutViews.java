package club.yearline.groundschool;

import club.yearline.accounts.QrCode;
import club.yearline.browse.FeatureChart;
import club.yearline.browse.Timelines;
import club.yearline.catalog.Chapters;
import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.citation.Citation;
import club.yearline.citing.Styles;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Picture;
import club.yearline.effectivity.Variant;
import club.yearline.groundschool.HandoutView.Changed;
import club.yearline.groundschool.HandoutView.Code;
import club.yearline.groundschool.HandoutView.Section;
import club.yearline.groundschool.HandoutView.Value;
import club.yearline.web.Phrases;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** Makes what a hand-out shows. */
@Component
class HandoutViews {

  /** Longer addresses make a code too fine to be read off paper. */
  static final int LONGEST_IN_CODE = 900;

  private static final int VALUES_IN_A_ROW = 3;

  private final Timelines timelines;
  private final Styles styles;
  private final Chapters chapters;
  private final Wording wording;
  private final Phrases phrases;

  HandoutViews(
      Timelines timelines, Styles styles, Chapters chapters, Wording wording, Phrases phrases) {
    this.timelines = timelines;
    this.styles = styles;
    this.chapters = chapters;
    this.wording = wording;
    this.phrases = phrases;
  }

  /**
   * A hand-out.
   *
   * @param permalink the full address
   * @param brief the full address without the remarks
   */
  HandoutView view(Chosen chosen, String permalink, String brief, Links links) {
    Notes notes = new Notes(links.reading().catalogue(), styles);
    List<Section> sections = new ArrayList<>();
    for (Feature feature : chosen.features()) {
      sections.add(section(sections.size() + 1, feature, chosen, notes, links));
    }
    Handout handout = chosen.handout();
    return new HandoutView(
        handout.title().isEmpty() ? phrases.of("school.untitled") : handout.title(),
        handout.remarks().lines().map(String::strip).filter(l -> !l.isEmpty()).toList(),
        scope(chosen),
        sections,
        notes.all(),
        links.reading().revision(),
        links.reading().snapshot().revision().publishedAt().atZone(ZoneOffset.UTC).toLocalDate()
            + "",
        permalink,
        code(permalink, brief));
  }

  private static Code code(String permalink, String brief) {
    boolean whole = permalink.length() <= LONGEST_IN_CODE || permalink.equals(brief);
    String text = whole ? permalink : brief;
    QrCode squares = QrCode.of(text);
    return new Code(squares.size(), squares.path(), text, whole);
  }

  private String scope(Chosen chosen) {
    String variants =
        chosen.variants().stream().map(Variant::designation).collect(Collectors.joining(", "));
    Handout handout = chosen.handout();
    if (handout.from().isEmpty() && handout.to().isEmpty()) {
      return variants;
    }
    String years =
        handout.from().isEmpty()
            ? phrases.of("school.up-to", handout.to())
            : handout.to().isEmpty()
                ? phrases.of("school.from", handout.from())
                : wording.range(handout.from(), handout.to());
    return phrases.of("school.scope", variants, years);
  }

  private Section section(int number, Feature feature, Chosen chosen, Notes notes, Links links) {
    Timelines.Part part =
        timelines.part(feature, chosen.variants(), chosen.first(), chosen.last(), links);
    FeatureChart chart = part.chart().orElse(null);
    return new Section(
        number,
        feature.name(),
        (feature.chapter() + " " + chapters.title(feature.chapter()).orElse("")).strip(),
        feature.description(),
        chart,
        "timeline-" + number,
        chart == null
            ? List.of()
            : chart.key().stream()
                .map(m -> new HandoutView.Key(m.fill(), m.letter(), m.label()))
                .toList(),
        inRows(feature.values().stream().map(v -> value(v, links)).toList()),
        part.rows(),
        part.changes().stream().map(c -> changed(feature, c, chosen, notes)).toList());
  }

  private static List<List<Value>> inRows(List<Value> values) {
    List<List<Value>> rows = new ArrayList<>();
    for (int i = 0; i < values.size(); i += VALUES_IN_A_ROW) {
      rows.add(values.subList(i, Math.min(i + VALUES_IN_A_ROW, values.size())));
    }
    return rows;
  }

  private static Value value(FeatureValue value, Links links) {
    Optional<Picture> picture =
        Optional.ofNullable(value.picture()).flatMap(links.reading().catalogue()::picture);
    return new Value(
        value.label(),
        value.cue(),
        picture.map(links::picture).orElse(null),
        picture.map(Picture::sha256).orElse(null),
        picture.map(p -> p.mediaType().equals("image/svg+xml")).orElse(false),
        picture.isEmpty() ? null : value.pictureCredit());
  }

  private Changed changed(Feature feature, Change change, Chosen chosen, Notes notes) {
    Map<String, List<String>> places = new LinkedHashMap<>();
    for (Variant variant : chosen.variants()) {
      Optional<CutIn> cutIn = change.cutIn(variant.key());
      cutIn.ifPresent(
          c ->
              places
                  .computeIfAbsent(wording.cutIn(c), k -> new ArrayList<>())
                  .add(variant.designation()));
    }
    return new Changed(
        change.title(),
        wording.offering(feature, change.offering()),
        places.entrySet().stream()
            .map(e -> phrases.of("school.cut-in", String.join(", ", e.getValue()), e.getKey()))
            .toList(),
        notes.marks(bearing(change, chosen)));
  }

  /** What speaks of other variants only is left out. */
  private static List<Citation> bearing(Change change, Chosen chosen) {
    return change.citations().stream()
        .filter(c -> chosen.variants().stream().anyMatch(v -> c.bearsOn(v.key())))
        .toList();
  }
}
