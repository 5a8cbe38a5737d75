package club.yearline.compare;

import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Draws what is compared. */
final class Plots {

  private static final List<Figure> FIGURES =
      List.of(Figure.CRUISE_SPEED, Figure.CLIMB_RATE, Figure.TAKE_OFF);
  private static final List<Derived> DERIVED =
      List.of(Derived.USEFUL_LOAD, Derived.PAYLOAD_FULL_FUEL, Derived.RANGE);

  private final Phrases phrases;
  private final Words words;
  private final Told told;
  private final Amount reserve;
  private final List<Column> columns;

  Plots(Phrases phrases, Words words, Told told, Amount reserve, List<Column> columns) {
    this.phrases = phrases;
    this.words = words;
    this.told = told;
    this.reserve = reserve;
    this.columns = columns;
  }

  /** The bars: of each figure that at least one has. */
  List<Plot> bars() {
    List<Plot> plots = new ArrayList<>();
    for (Derived derived : DERIVED) {
      add(
          plots,
          derived.code(),
          words.heading(derived),
          told.scale(derived.scale()),
          c -> c.range(derived, reserve));
    }
    for (Figure figure : FIGURES) {
      add(plots, figure.key(), words.heading(figure), told.scale(figure), c -> c.range(figure));
    }
    return plots;
  }

  private interface Ranges {
    Optional<Interval> of(Column column);
  }

  private void add(List<Plot> plots, String code, String title, Scale scale, Ranges ranges) {
    List<Plot.Measure> measures =
        columns.stream().map(c -> measure(c, scale, ranges.of(c).orElse(null))).toList();
    if (measures.stream().anyMatch(m -> m.range() != null)) {
      plots.add(
          Plot.of("bars-" + code, title, phrases.of("compare.bars.description", title), measures));
    }
  }

  private Plot.Measure measure(Column column, Scale scale, @Nullable Interval range) {
    return new Plot.Measure(
        words.name(column.position()),
        range == null ? null : range.in(scale),
        range == null ? phrases.of("compare.none") : told.text(range, scale));
  }

  /** Payload with full tanks against range; empty where fewer than two have both. */
  Optional<Scatter> scatter() {
    List<Scatter.Pair> pairs = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      Optional<Interval> across = columns.get(i).range(Derived.PAYLOAD_FULL_FUEL, reserve);
      Optional<Interval> upward = columns.get(i).range(Derived.RANGE, reserve);
      if (across.isPresent() && upward.isPresent()) {
        pairs.add(
            new Scatter.Pair(
                Comparisons.letter(i),
                across.get().in(told.scale(Scale.LB)),
                upward.get().in(told.scale(Scale.NMI))));
      }
    }
    return pairs.size() < 2 ? Optional.empty() : Optional.of(Scatter.of(pairs));
  }

  /** What an axis of the scatter says: the figure and its unit. */
  String axis(Derived derived) {
    return phrases.of("compare.axis", words.heading(derived), told.scale(derived.scale()).sign());
  }
}
