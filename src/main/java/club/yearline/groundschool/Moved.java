package club.yearline.groundschool;

import club.yearline.catalog.Wording;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.ImpactRow;
import club.yearline.effectivity.Serial;
import club.yearline.effectivity.Series;
import club.yearline.web.Phrases;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a kept hand-out says otherwise at a later revision. */
record Moved(Wording wording, Phrases phrases) {

  /** One stretch of positions whose answer differs. */
  record Line(String feature, String variant, String place, String before, String after) {}

  List<Line> lines(List<ImpactRow> impact, Chosen chosen) {
    return impact.stream()
        .filter(
            r -> chosen.shows(r.variant().key(), r.feature().key(), r.firstYear(), r.lastYear()))
        .map(this::line)
        .toList();
  }

  private Line line(ImpactRow row) {
    boolean evidence = row.kind() == ImpactRow.Kind.EVIDENCE_ONLY;
    return new Line(
        row.feature().name(),
        row.variant().designation(),
        place(row),
        evidence ? evidence(row.before()) : answer(row.before()),
        evidence ? evidence(row.after()) : answer(row.after()));
  }

  private String place(ImpactRow row) {
    String years =
        row.firstYear() == null
            ? phrases.of("school.moved.no-year")
            : wording.years(row.firstYear(), row.lastYear());
    String first = serial(row.series(), row.firstSerial());
    String last = serial(row.series(), row.lastSerial());
    return first.isEmpty()
        ? years
        : phrases.of("school.moved.place", years, wording.range(first, last));
  }

  private static String serial(@Nullable Series series, @Nullable Serial serial) {
    return series == null || serial == null ? "" : series.show(serial);
  }

  private String answer(@Nullable Answer answer) {
    return answer == null
        ? phrases.of("school.moved.none")
        : phrases.of(
            "school.moved.answer",
            wording.answer(answer),
            phrases.of("mark.state." + answer.state().code()));
  }

  private String evidence(@Nullable Answer answer) {
    if (answer == null) {
      return answer(null);
    }
    String grade = phrases.of("mark.grade." + answer.evidence().grade().code());
    String disputed = answer.evidence().disputed() ? ", " + phrases.of("mark.disputed") : "";
    return phrases.of("school.moved.evidence", grade + disputed, answer.retrofits().size());
  }
}
