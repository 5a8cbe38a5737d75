package club.yearline.effectivity;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Finds the stretches of serials with one answer, from the cut-ins and never by counting. */
final class Stretches {

  private final Timeline timeline;
  private final Production production;
  private final @Nullable Integer year;
  private final List<Stretch> found = new ArrayList<>();
  private Serial reached = Serial.of(0);

  private Stretches(Timeline timeline, Production production, @Nullable Integer year) {
    this.timeline = timeline;
    this.production = production;
    this.year = year;
  }

  /** The stretches of one variant's blocks of one year; null for the blocks without a year. */
  static List<Stretch> of(Timeline timeline, Production production, @Nullable Integer year) {
    Stretches stretches = new Stretches(timeline, production, year);
    production.blocksOf(year).forEach(stretches::walk);
    return List.copyOf(stretches.found);
  }

  private void walk(Block block) {
    TreeSet<Serial> cuts = new TreeSet<>();
    timeline.addCuts(block.series(), cuts);
    Serial from = start(block);
    while (from.isBelow(block.end())) {
      Serial cut = cuts.higher(from);
      Serial to = cut == null || block.end().isBelow(cut) ? block.end() : cut;
      add(block, from, to);
      from = to;
    }
  }

  /** Where blocks of one variant and year overlap, each serial is walked once. */
  private Serial start(Block block) {
    boolean walked = continues(block.series()) && block.first().isBelow(reached);
    return walked ? reached : block.first();
  }

  private void add(Block block, Serial from, Serial to) {
    Series series = block.series();
    Answer answer = timeline.along(Position.of(timeline.variant(), year, series, from));
    double airframes = production.airframes(series, from, to, year);
    if (continues(series) && previous().answer().agreesWith(answer)) {
      Stretch joined = found.remove(found.size() - 1);
      found.add(
          new Stretch(
              series,
              joined.first(),
              lastBefore(
                  to, block.first().isBelow(joined.first()) ? joined.first() : block.first()),
              joined.airframes() + airframes,
              joined.answer()));
    } else {
      found.add(new Stretch(series, from, lastBefore(to, from), airframes, answer));
    }
    reached = to;
  }

  private static Serial lastBefore(Serial end, Serial least) {
    Serial named = end.lastNamedBefore();
    return named.isBelow(least) ? least : named;
  }

  private boolean continues(Series series) {
    return !found.isEmpty() && previous().series().key().equals(series.key());
  }

  private Stretch previous() {
    return found.get(found.size() - 1);
  }
}
