package club.yearline.effectivity;

import club.yearline.citation.Source;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** One feature's changes along one variant's production, in order. */
public final class Timeline {

  private final Variant variant;
  private final Feature feature;
  private final Production production;
  private final Map<String, Source> sources;
  private final List<Retrofit> retrofits;
  private final Step[] steps;

  /** The answer when only nothing is possible, then those when only step i is. */
  private final Answer[] settled;

  Timeline(
      Variant variant,
      Feature feature,
      List<Step> steps,
      Production production,
      List<Retrofit> retrofits,
      Map<String, Source> sources) {
    this.variant = variant;
    this.feature = feature;
    this.production = production;
    this.sources = sources;
    this.retrofits = List.copyOf(retrofits);
    this.steps = steps.stream().sorted(Step.IN_ORDER).toArray(Step[]::new);
    this.settled = new Answer[this.steps.length + 1];
    settled[0] =
        new Answer(feature, State.UNRECORDED, List.of(), List.of(), Evidence.NONE, this.retrofits);
    for (int i = 0; i < this.steps.length; i++) {
      settled[i + 1] = answer(State.SETTLED, List.of(possible(this.steps[i], false)));
    }
  }

  /** The variant. */
  public Variant variant() {
    return variant;
  }

  /** The feature. */
  public Feature feature() {
    return feature;
  }

  /** The changes that apply to the variant, in order. */
  public List<Change> changes() {
    return List.of(steps).stream().map(Step::change).toList();
  }

  /** The retrofits recorded for the variant. */
  public List<Retrofit> retrofits() {
    return retrofits;
  }

  List<Step> steps() {
    return List.of(steps);
  }

  /** The answer for the year, all its serials taken together; or for the one serial. */
  public Answer at(Position position) {
    return position.serial() == null && position.year() != null
        ? inYear(position.year())
        : along(position);
  }

  /** Walks the changes in order (domain section 5, "with a serial"). */
  Answer along(Position position) {
    int[] years = production.sharedYears();
    Standing previous = null;
    int base = 0;
    int more = 0;
    for (int i = 0; i < steps.length; i++) {
      previous = steps[i].standing(position, previous, years);
      if (previous == Standing.AFTER) {
        base = i + 1;
        more = 0;
      } else if (previous != Standing.BEFORE) {
        more++;
      }
    }
    return more == 0 ? settled[base] : several(position, base);
  }

  private Answer several(Position position, int base) {
    List<Possible> possible = new ArrayList<>();
    possible.add(base == 0 ? Possible.NOTHING_RECORDED : possible(steps[base - 1], false));
    State state = State.TRANSITION;
    Standing previous = base == 0 ? null : Standing.AFTER;
    for (int i = base; i < steps.length; i++) {
      previous = steps[i].standing(position, previous, production.sharedYears());
      if (previous != Standing.BEFORE) {
        possible.add(possible(steps[i], previous == Standing.OPEN));
        state = previous == Standing.OPEN ? State.OPEN : state;
      }
    }
    return answer(state, possible);
  }

  private Answer inYear(int year) {
    List<Stretch> stretches = Stretches.of(this, production, year);
    if (stretches.isEmpty()) {
      return along(Position.of(variant, year));
    }
    if (stretches.stream().allMatch(s -> s.answer().agreesWith(stretches.get(0).answer()))) {
      return stretches.get(0).answer();
    }
    Map<String, Possible> deciding = new LinkedHashMap<>();
    for (Stretch stretch : stretches) {
      stretch.answer().possible().forEach(p -> deciding.putIfAbsent(p.changeKey(), p));
    }
    return new Answer(
        feature,
        State.SPLITS,
        List.of(),
        stretches,
        Evidence.of(variant.key(), deciding.values(), sources),
        retrofits);
  }

  /** The changes in whose window a position lies. */
  List<Step> inside(Position position) {
    List<Step> inside = new ArrayList<>();
    Standing previous = null;
    for (Step step : steps) {
      previous = step.standing(position, previous, production.sharedYears());
      if (previous == Standing.INSIDE) {
        inside.add(step);
      }
    }
    return inside;
  }

  /**
   * The years of production with their answers, ascending; neighbouring years that agree are one
   * span.
   */
  public List<YearSpan> spans() {
    List<YearSpan> spans = new ArrayList<>();
    for (int year : production.sharedYears()) {
      YearSpan span = new YearSpan(year, year, inYear(year));
      YearSpan last = spans.isEmpty() ? null : spans.get(spans.size() - 1);
      if (last != null && last.lastYear() == year - 1 && last.answer().agreesWith(span.answer())) {
        spans.set(spans.size() - 1, new YearSpan(last.firstYear(), year, last.answer()));
      } else {
        spans.add(span);
      }
    }
    return List.copyOf(spans);
  }

  /** The stretches of the variant's serials of which nobody knows the year. */
  public List<Stretch> yearless() {
    return Stretches.of(this, production, null);
  }

  /** The serials of a series at which an answer may change. */
  void addCuts(Series series, TreeSet<Serial> cuts) {
    for (Step step : steps) {
      addCut(step.first(), series, cuts);
      addCut(step.settled(), series, cuts);
    }
  }

  private static void addCut(@Nullable End end, Series series, TreeSet<Serial> cuts) {
    if (end != null
        && end.serial() != null
        && end.series() != null
        && end.series().key().equals(series.key())) {
      cuts.add(end.serial());
    }
  }

  private Answer answer(State state, List<Possible> possible) {
    Evidence evidence = Evidence.of(variant.key(), possible, sources);
    return new Answer(feature, state, possible, List.of(), evidence, retrofits);
  }

  private static Possible possible(Step step, boolean open) {
    return new Possible(step.change(), step.cutIn(), open);
  }
}
