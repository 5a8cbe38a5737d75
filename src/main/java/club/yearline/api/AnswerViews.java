package club.yearline.api;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Difference;
import club.yearline.effectivity.Finding;
import club.yearline.effectivity.ImpactRow;
import club.yearline.effectivity.State;
import club.yearline.effectivity.Timeline;
import club.yearline.effectivity.YearSpan;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Computed answers as the API shows them. */
final class AnswerViews {

  private AnswerViews() {}

  record Expected(
      int revision,
      PositionView position,
      EntryViews.@Nullable BlockView block,
      List<AnswerView> features,
      @Nullable Neighbour yearBefore,
      @Nullable Neighbour yearAfter,
      String caution) {}

  /** A neighbouring year of production and what differs there. */
  record Neighbour(int year, List<DifferenceView> differences) {

    static Neighbour of(int year, List<Difference> pairs) {
      return new Neighbour(year, differing(pairs));
    }
  }

  record Differences(
      int revision,
      PositionView from,
      PositionView to,
      List<DifferenceView> differences,
      int same,
      String caution) {}

  @JsonInclude(JsonInclude.Include.ALWAYS)
  record DifferenceView(
      String feature,
      String name,
      String chapter,
      @Nullable AnswerView from,
      @Nullable AnswerView to) {

    static DifferenceView of(Difference difference) {
      return new DifferenceView(
          difference.feature().key(),
          difference.feature().name(),
          difference.feature().chapter(),
          AnswerView.ofNullable(difference.from()),
          AnswerView.ofNullable(difference.to()));
    }
  }

  static List<DifferenceView> differing(List<Difference> pairs) {
    return pairs.stream().filter(Difference::differs).map(DifferenceView::of).toList();
  }

  record TimelineView(int revision, String feature, String name, List<VariantTimeline> variants) {}

  record VariantTimeline(
      String variant, String family, List<SpanView> stretches, List<StretchView> yearless) {

    static VariantTimeline of(Timeline timeline) {
      return new VariantTimeline(
          timeline.variant().key(),
          timeline.variant().family(),
          timeline.spans().stream().map(SpanView::of).toList(),
          timeline.yearless().stream().map(StretchView::of).toList());
    }
  }

  record SpanView(
      int firstYear,
      int lastYear,
      String state,
      @Nullable List<OfferingView> offerings,
      @Nullable List<StretchView> stretches,
      String grade,
      boolean disputed) {

    static SpanView of(YearSpan span) {
      Answer answer = span.answer();
      boolean splits = answer.state() == State.SPLITS;
      return new SpanView(
          span.firstYear(),
          span.lastYear(),
          answer.state().code(),
          splits ? null : AnswerView.offerings(answer),
          splits ? answer.stretches().stream().map(StretchView::of).toList() : null,
          answer.evidence().grade().code(),
          answer.evidence().disputed());
    }
  }

  record ImpactView(int from, int to, List<Row> rows) {}

  record Row(
      String kind,
      String variant,
      String feature,
      @Nullable Integer firstYear,
      @Nullable Integer lastYear,
      @Nullable String series,
      @Nullable String first,
      @Nullable String last,
      double airframesBefore,
      double airframesAfter,
      @JsonInclude(JsonInclude.Include.ALWAYS) @Nullable AnswerView before,
      @JsonInclude(JsonInclude.Include.ALWAYS) @Nullable AnswerView after) {

    static Row of(ImpactRow row) {
      return new Row(
          row.kind().code(),
          row.variant().key(),
          row.feature().key(),
          row.firstYear(),
          row.lastYear(),
          row.series() == null ? null : row.series().key(),
          row.series() == null || row.firstSerial() == null
              ? null
              : row.series().show(row.firstSerial()),
          row.series() == null || row.lastSerial() == null
              ? null
              : row.series().show(row.lastSerial()),
          row.airframesBefore(),
          row.airframesAfter(),
          AnswerView.ofNullable(row.before()),
          AnswerView.ofNullable(row.after()));
    }
  }

  record FindingsView(int revision, List<FindingView> findings) {}

  record FindingView(
      String code,
      String level,
      String table,
      String record,
      @Nullable String field,
      @Nullable String value,
      List<String> arguments) {

    static FindingView of(Finding finding) {
      return new FindingView(
          finding.code().code(),
          finding.code().level().code(),
          finding.table(),
          finding.record(),
          finding.field(),
          finding.value(),
          finding.arguments());
    }
  }
}
