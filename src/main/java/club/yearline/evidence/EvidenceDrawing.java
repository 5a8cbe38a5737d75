package club.yearline.evidence;

import club.yearline.estimation.Bounds;
import club.yearline.estimation.Estimate;
import club.yearline.evidence.EvidenceChart.Mark;
import club.yearline.evidence.EvidenceChart.Note;
import club.yearline.evidence.EvidenceChart.Ring;
import club.yearline.evidence.EvidenceChart.Stamp;
import club.yearline.evidence.EvidenceChart.Strip;
import club.yearline.evidence.Weighed.Stood;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Works out the geometry of an evidence plot. */
final class EvidenceDrawing {

  static final double WIDTH = 840;
  static final double HEIGHT = 268;
  static final double TOP_OF_BANDS = 22;
  static final double FOOT = 232;

  private static final double LEFT = 64;
  private static final double RIGHT = WIDTH - 28;
  private static final double NEW_ROW = 72;
  private static final double OLD_ROW = 128;
  private static final double CURVE_TOP = 142;
  private static final double CURVE_FOOT = 202;
  private static final double RECORD = 218;

  private static final double COLUMN = 16;
  private static final double STEP = 11;
  private static final int MOST_LEVELS = 4;
  private static final int TICKS = 6;
  private static final double WORD = 82;

  private final Weighed weighed;
  private final Phrases phrases;
  private final SerialScale scale;
  private final Map<String, StringBuilder> paths = new HashMap<>();
  private final Map<String, Integer> levels = new HashMap<>();
  private final List<Ring> rings = new ArrayList<>();
  private final List<Note> notes = new ArrayList<>();

  private EvidenceDrawing(Weighed weighed, Phrases phrases) {
    this.weighed = weighed;
    this.phrases = phrases;
    this.scale = SerialScale.around(weighed.estimate().candidates(), LEFT, RIGHT);
  }

  static EvidenceChart of(String id, Weighed weighed, Phrases phrases) {
    return new EvidenceDrawing(weighed, phrases).draw(id);
  }

  /** How many airframes stand at the edge of the drawing, because they are further off. */
  static int beyond(Weighed weighed) {
    SerialScale scale = SerialScale.around(weighed.estimate().candidates(), LEFT, RIGHT);
    return (int) weighed.airframes().stream().filter(a -> !scale.shows(a.band())).count();
  }

  private EvidenceChart draw(String id) {
    drawAirframes();
    notes.add(new Note(LEFT - 10, NEW_ROW - 4, "end", phrases.of("evidence.new")));
    notes.add(new Note(LEFT - 10, OLD_ROW - 4, "end", phrases.of("evidence.old")));
    notes.add(new Note(LEFT - 10, CURVE_TOP + 8, "end", phrases.of("evidence.all")));
    notes.add(new Note(LEFT - 10, CURVE_FOOT + 4, "end", phrases.of("evidence.no")));
    notes.add(new Note(LEFT - 10, RECORD + 4, "end", phrases.of("evidence.record")));
    return new EvidenceChart(
        id,
        WIDTH,
        HEIGHT,
        paths.entrySet().stream()
            .map(p -> new Mark(p.getKey(), p.getValue().toString()))
            .sorted(Comparator.comparing(Mark::kind))
            .toList(),
        bands().stream().map(this::strip).toList(),
        growth(),
        recorded(),
        rings,
        notes,
        ticks());
  }

  /** Those in doubt first, so that they stand at the foot of their column and are ringed there. */
  private void drawAirframes() {
    Set<String> suspects =
        weighed.estimate().suspects().stream()
            .map(s -> s.sighting().airframe())
            .collect(Collectors.toSet());
    for (boolean inDoubt : new boolean[] {true, false}) {
      for (Stood airframe : weighed.airframes()) {
        if (suspects.contains(airframe.airframe()) == inDoubt) {
          draw(airframe, inDoubt);
        }
      }
    }
    levels.forEach(this::noteTheRest);
  }

  private void draw(Stood airframe, boolean inDoubt) {
    double x = scale.column(airframe.band(), COLUMN);
    String column = (airframe.isNew() ? "new/" : "old/") + x;
    int level = levels.merge(column, 1, Integer::sum) - 1;
    if (level >= MOST_LEVELS) {
      return;
    }
    double y = (airframe.isNew() ? NEW_ROW : OLD_ROW) - level * STEP;
    String kind = (airframe.isNew() ? "new" : "old") + (airframe.named() ? "" : "-coarse");
    paths.computeIfAbsent(kind, k -> new StringBuilder()).append(shape(airframe.isNew(), x, y));
    if (inDoubt) {
      rings.add(new Ring(x, y - 4, word(x, y)));
    }
  }

  private static String shape(boolean isNew, double x, double y) {
    return isNew
        ? format("M%.1f %.1fl4.5 -8.5 4.5 8.5z", x - 4.5, y)
        : format("M%.1f %.1fh7v-7h-7z", x - 3.5, y);
  }

  /** The word beside a ring, where no other word stands in its way. */
  private @Nullable Note word(double x, double y) {
    boolean free =
        rings.stream()
            .map(Ring::word)
            .noneMatch(w -> w != null && Math.abs(w.y() - y) < STEP && Math.abs(w.x() - x) < WORD);
    boolean atEdge = x > RIGHT - WORD;
    return free
        ? new Note(
            atEdge ? x - 12 : x + 12, y, atEdge ? "end" : "start", phrases.of("evidence.exchanged"))
        : null;
  }

  private void noteTheRest(String column, int count) {
    if (count > MOST_LEVELS) {
      double x = Double.parseDouble(column.substring(4));
      double row = column.startsWith("new") ? NEW_ROW : OLD_ROW;
      notes.add(new Note(x, row - MOST_LEVELS * STEP, "middle", "+" + (count - MOST_LEVELS)));
    }
  }

  private List<Bounds> bands() {
    Estimate estimate = weighed.estimate();
    return weighed.isTransition() ? List.of(weighed.window()) : estimate.credible();
  }

  /** A single serial still has to be seen. */
  private Strip strip(Bounds range) {
    double from = scale.x(range.first() - 0.5);
    double to = scale.x(range.last() + 0.5);
    double width = Math.max(3, to - from);
    return new Strip(tenth((from + to - width) / 2), tenth(width));
  }

  /** The curve, with no more points than can be told apart. */
  private String growth() {
    StringBuilder path = new StringBuilder(format("M%.1f %.1f", LEFT, CURVE_FOOT));
    double last = LEFT;
    List<Estimate.Point> points = weighed.estimate().growth();
    for (int i = 0; i < points.size(); i++) {
      double x = scale.x(points.get(i).ordinal());
      if (i == 0 || i == points.size() - 1 || x - last >= 1.5) {
        path.append(format("L%.1f %.1f", x, y(points.get(i).chance())));
        last = x;
      }
    }
    return path.append(format("H%.1f", RIGHT)).toString();
  }

  private static double y(double chance) {
    return CURVE_FOOT - chance * (CURVE_FOOT - CURVE_TOP);
  }

  /** The recorded window: a line between two posts, open where an end is not recorded. */
  private String recorded() {
    double from = scale.x(weighed.question().lowest().orElse(0));
    double to = scale.x(weighed.question().highest().orElse(Long.MAX_VALUE));
    return format(
        "M%.1f %.1fv10M%.1f %.1fH%.1fM%.1f %.1fv10",
        from, RECORD - 5, from, RECORD, Math.max(to, from + 1), Math.max(to, from + 1), RECORD - 5);
  }

  private List<Stamp> ticks() {
    return scale.round(TICKS).stream()
        .map(o -> new Stamp(tenth(scale.x(o)), weighed.show(o)))
        .toList();
  }

  private static double tenth(double value) {
    return Math.round(value * 10) / 10.0;
  }

  private static String format(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }
}
