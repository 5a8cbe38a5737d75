package club.yearline.effectivity;

import static club.yearline.effectivity.Finding.Code.AXES_DISAGREE;
import static club.yearline.effectivity.Finding.Code.CHANGES_NOTHING;
import static club.yearline.effectivity.Finding.Code.NO_BASELINE;
import static club.yearline.effectivity.Finding.Code.WINDOWS_OVERLAP;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What only the compiled timelines of a catalogue without errors show. */
final class TimelineChecks {

  private final Catalogue catalogue;
  private final Report report;

  TimelineChecks(Catalogue catalogue, Report report) {
    this.catalogue = catalogue;
    this.report = report;
  }

  void run() {
    for (Variant variant : catalogue.records().variants()) {
      VariantModel model = catalogue.model(variant.key()).orElseThrow();
      for (Timeline timeline : model.timelines()) {
        List<Segment> segments =
            needsSegments(timeline) ? Segments.of(model, timeline::addCuts) : List.of();
        baseline(timeline, segments);
        overlaps(timeline, segments);
        repeats(timeline);
        timeline.steps().forEach(step -> new AxisCheck(model, timeline, step).run());
      }
    }
  }

  /** Segments are many, and most timelines show by their steps alone that nothing is wrong. */
  private static boolean needsSegments(Timeline timeline) {
    List<Step> steps = timeline.steps();
    return !steps.get(0).cutIn().atStart()
        || steps.stream().filter(s -> !s.cutIn().atStart()).count() > 1;
  }

  /** Nothing says what a feature began with where, somewhere, nothing may have been recorded. */
  private void baseline(Timeline timeline, List<Segment> segments) {
    boolean startsSomewhere =
        timeline.steps().get(0).cutIn().atStart()
            || segments.stream().noneMatch(s -> nothingIn(timeline.along(s.position())));
    if (!startsSomewhere) {
      report.record(NO_BASELINE, "features", timeline.feature().key(), timeline.variant().key());
    }
  }

  private static boolean nothingIn(Answer answer) {
    return answer.state() == State.UNRECORDED
        || answer.possible().stream().anyMatch(Possible::isNothing);
  }

  private void overlaps(Timeline timeline, List<Segment> segments) {
    Set<String> found = new TreeSet<>();
    for (Segment segment : segments) {
      List<Step> inside = timeline.inside(segment.position());
      for (int i = 1; i < inside.size(); i++) {
        String earlier = inside.get(i - 1).change().key();
        String later = inside.get(i).change().key();
        if (found.add(earlier + " " + later)) {
          String record = later + "/" + timeline.variant().key();
          report.record(WINDOWS_OVERLAP, "cut-ins", record, earlier);
        }
      }
    }
  }

  private void repeats(Timeline timeline) {
    List<Step> steps = timeline.steps();
    for (int i = 1; i < steps.size(); i++) {
      if (offering(steps.get(i)).equals(offering(steps.get(i - 1)))) {
        String record = steps.get(i).change().key() + "/" + timeline.variant().key();
        report.record(CHANGES_NOTHING, "cut-ins", record, steps.get(i - 1).change().key());
      }
    }
  }

  private static Set<String> offering(Step step) {
    return step.change().offering().stream()
        .map(
            o ->
                o.canonicalValue()
                    + " "
                    + o.fit().code()
                    + (o.takeRate() == null ? "" : " " + o.takeRate().stripTrailingZeros()))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Whether the year and serial windows of one cut-in can both be right, given the blocks. */
  private final class AxisCheck {
    private final VariantModel model;
    private final Timeline timeline;
    private final Step step;

    AxisCheck(VariantModel model, Timeline timeline, Step step) {
      this.model = model;
      this.timeline = timeline;
      this.step = step;
    }

    void run() {
      End first = step.first();
      if (first != null && !firstAgrees(first)) {
        add("first_year", first);
      }
      End settled = step.settled();
      if (settled != null && !settledAgrees(settled)) {
        add("settled_year", settled);
      }
    }

    /** The first year in which the new one is seen is that of the first serial. */
    private boolean firstAgrees(End end) {
      return end.year() == null
          || end.serialYear() == null
          || !isHeld(end)
          || end.year().equals(end.serialYear());
    }

    /**
     * The first year in which all have it is that of the settled serial if no earlier serial of the
     * year lacks it; else the next year of production.
     */
    private boolean settledAgrees(End end) {
      Integer year = end.year();
      Integer serialYear = end.serialYear();
      if (year == null || serialYear == null || !isHeld(end)) {
        return true;
      }
      boolean allOfYear =
          model.production().blocksOf(serialYear).stream()
              .filter(b -> end.series() != null && b.series().key().equals(end.series().key()))
              .noneMatch(b -> end.serial() != null && b.first().isBelow(end.serial()));
      int expected = allOfYear ? serialYear : model.yearAfter(serialYear).orElse(serialYear + 1);
      return year == expected;
    }

    private boolean isHeld(End end) {
      return model.production().blocks().stream()
          .anyMatch(
              b ->
                  end.series() != null
                      && end.serial() != null
                      && b.series().key().equals(end.series().key())
                      && b.year() != null
                      && b.holds(end.serial()));
    }

    private void add(String field, End end) {
      String record = step.change().key() + "/" + timeline.variant().key();
      report.field(
          AXES_DISAGREE,
          "cut-ins",
          record,
          field,
          String.valueOf(end.year()),
          String.valueOf(end.serialYear()));
    }
  }
}
