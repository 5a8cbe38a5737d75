package club.yearline.api;

import club.yearline.citation.Grade;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Difference;
import club.yearline.effectivity.Finding;
import club.yearline.effectivity.ImpactRow;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.State;
import club.yearline.effectivity.Timeline;
import club.yearline.effectivity.YearSpan;
import com.fasterxml.jackson.annotation.JsonInclude;
import io.swagger.v3.oas.annotations.media.Schema;
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
  record Neighbour(int year, List<DifferenceView> differences) {}

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

    static DifferenceView of(
        Catalogue catalogue, Difference difference, Position from, Position to) {
      return new DifferenceView(
          difference.feature().key(),
          difference.feature().name(),
          difference.feature().chapter(),
          AnswerView.ofNullable(catalogue, difference.from(), from),
          AnswerView.ofNullable(catalogue, difference.to(), to));
    }
  }

  static List<DifferenceView> differing(
      Catalogue catalogue, List<Difference> pairs, Position from, Position to) {
    return pairs.stream()
        .filter(Difference::differs)
        .map(d -> DifferenceView.of(catalogue, d, from, to))
        .toList();
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
      @Coded(State.class) String state,
      @Schema(description = "Absent where the state is `splits`.")
          @Nullable List<OfferingView> offerings,
      @Schema(description = "There where the state is `splits`.")
          @Nullable List<StretchView> stretches,
      @Coded(Grade.class) String grade,
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
      @Coded(ImpactRow.Kind.class) String kind,
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

    static Row of(ImpactRow row, Catalogue before, Catalogue after) {
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
          AnswerView.ofNullable(before, row.before(), null),
          AnswerView.ofNullable(after, row.after(), null));
    }
  }

  record FindingsView(int revision, List<FindingView> findings) {}

  record FindingView(
      @Coded(Finding.Code.class) String code,
      @Coded(Finding.Level.class) String level,
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
