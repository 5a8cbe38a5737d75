package club.yearline.browse;

import club.yearline.browse.FeatureChart.Caption;
import club.yearline.browse.FeatureChart.Part;
import club.yearline.browse.FeatureChart.Row;
import club.yearline.browse.FeatureChart.Span;
import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.State;
import club.yearline.effectivity.Stretch;
import club.yearline.effectivity.YearSpan;
import club.yearline.web.YearScale;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Works out the geometry of a feature's timeline. */
final class FeatureDrawing {

  private static final double TOP = 22;
  private static final double HEADING = 28;
  private static final double LABEL = 18;
  private static final double NOTE = 13;
  private static final double GAP = 12;
  private static final double MARGIN = 20;

  private final Feature feature;
  private final List<Line> lines;
  private final List<Line> measured;
  private final @Nullable Links links;
  private final Wording wording;
  private final RecordTexts texts;
  private final Filling filling;
  private final List<Caption> headings = new ArrayList<>();
  private final List<Row> rows = new ArrayList<>();
  private double y = TOP;

  private FeatureDrawing(
      Feature feature,
      List<Line> lines,
      List<Line> measured,
      @Nullable Links links,
      Wording wording,
      RecordTexts texts) {
    this.feature = feature;
    this.lines = lines;
    this.measured = measured;
    this.links = links;
    this.wording = wording;
    this.texts = texts;
    List<Change> changes = ChangeOrder.merged(measured);
    this.filling =
        feature.isNumber()
            ? new NumberFilling(changes)
            : new ChoiceFilling(feature, new Fills(changes), needsBands(), wording);
  }

  /** The drawing; empty where no variant has a year of production to draw. */
  static Optional<FeatureChart> of(
      Feature feature, List<Line> lines, Links links, Wording wording, RecordTexts texts) {
    List<Line> drawn = inYears(lines);
    return drawn.isEmpty()
        ? Optional.empty()
        : Optional.of(new FeatureDrawing(feature, drawn, drawn, links, wording, texts).draw());
  }

  /**
   * The drawing of one state, to be held against that of another: years, patterns and heights are
   * those that both need. Answers lead nowhere, since a state may not be published.
   */
  static Optional<FeatureChart> beside(
      Feature feature, List<Line> lines, List<Line> others, Wording wording, RecordTexts texts) {
    List<Line> drawn = inYears(lines);
    List<Line> both = new ArrayList<>(drawn);
    both.addAll(inYears(others));
    return drawn.isEmpty()
        ? Optional.empty()
        : Optional.of(new FeatureDrawing(feature, drawn, both, null, wording, texts).draw());
  }

  private static List<Line> inYears(List<Line> lines) {
    return lines.stream().filter(l -> !l.spans().isEmpty()).toList();
  }

  private boolean needsBands() {
    return measured.stream()
        .flatMap(Line::answers)
        .anyMatch(
            a ->
                a.possible().stream()
                    .anyMatch(
                        p ->
                            p.offering().size() > 1
                                || p.offering().stream().anyMatch(o -> o.fit() == Fit.OPTION)));
  }

  private FeatureChart draw() {
    YearScale scale = scale();
    String family = "";
    for (Line line : lines) {
      if (!line.family().key().equals(family)) {
        family = line.family().key();
        headings.add(new Caption(MARGIN, Frame.tenth(y + 20), line.family().name()));
        y += HEADING;
      }
      add(line, scale);
    }
    return new FeatureChart(
        texts.get("feature.drawing.title", feature.name()),
        texts.get(feature.isNumber() ? "feature.drawing.steps" : "feature.drawing.patterns"),
        scale.right() + MARGIN,
        Frame.tenth(y),
        scale.ticks(),
        headings,
        rows,
        filling.key());
  }

  private YearScale scale() {
    int first = measured.stream().mapToInt(l -> l.spans().get(0).firstYear()).min().orElseThrow();
    int last =
        measured.stream()
            .mapToInt(l -> l.spans().get(l.spans().size() - 1).lastYear())
            .max()
            .orElseThrow();
    double step = Math.min(Math.max(1000.0 / (last - first + 1), 26), 64);
    return new YearScale(first, last, MARGIN, Math.floor(step));
  }

  private void add(Line line, YearScale scale) {
    double top = y + LABEL;
    Lanes lanes = new Lanes(top + filling.barHeight() + NOTE - 2, NOTE, scale.right() + MARGIN);
    List<Span> spans = new ArrayList<>();
    for (YearSpan span : line.spans()) {
      double x = scale.x(span.firstYear());
      Frame frame = new Frame(x, top, scale.x(span.lastYear() + 1) - x, filling.barHeight());
      spans.add(span(line, span, frame, lanes));
    }
    String name = line.variant().designation();
    double start = scale.x(line.spans().get(0).firstYear());
    double x = Math.min(start, scale.right() - name.length() * Tags.CHARACTER);
    rows.add(new Row(new Caption(Frame.tenth(x), Frame.tenth(top - 5), name), spans));
    y = top + filling.barHeight() + lanes.used() * NOTE + GAP;
  }

  private Span span(Line line, YearSpan span, Frame frame, Lanes lanes) {
    Answer answer = span.answer();
    String years = wording.years(span.firstYear(), span.lastYear());
    String state = texts.message("mark.state." + answer.state().code());
    String words =
        texts.get(
            "feature.span", line.variant().designation(), years, wording.answer(answer), state);
    List<Part> parts = parts(answer, frame);
    List<Caption> notes = new ArrayList<>();
    below(answer, parts, state).forEach(n -> notes.add(lanes.place(frame, n)));
    String href =
        links == null ? null : links.expected(line.variant().key(), span.firstYear(), null);
    return new Span(words, href, parts, notes);
  }

  private List<String> below(Answer answer, List<Part> parts, String state) {
    List<String> below = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      Answer own = answer.stretches().isEmpty() ? answer : answer.stretches().get(i).answer();
      String left = filling.below(own, parts.get(i).frame());
      if (!left.isEmpty() && !below.contains(left)) {
        below.add(left);
      }
    }
    List<String> notes = new ArrayList<>();
    if (!below.isEmpty()) {
      notes.add(String.join(", ", below));
    }
    if (answer.state() != State.SETTLED) {
      notes.add(state);
    }
    return notes;
  }

  /** A split is drawn in proportion to the airframes of its stretches, equally if unknown. */
  private List<Part> parts(Answer answer, Frame frame) {
    if (answer.stretches().isEmpty()) {
      return List.of(filling.part(answer, frame));
    }
    double total = answer.stretches().stream().mapToDouble(Stretch::airframes).sum();
    List<Part> parts = new ArrayList<>();
    double from = 0;
    for (Stretch stretch : answer.stretches()) {
      double share = total > 0 ? stretch.airframes() / total : 1.0 / answer.stretches().size();
      parts.add(filling.part(stretch.answer(), frame.across(from, from + share)));
      from += share;
    }
    return parts;
  }
}
