package club.yearline.browse;

import club.yearline.browse.FeaturePage.AnswerRow;
import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Stretch;
import club.yearline.effectivity.YearSpan;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A feature's timeline as a table: a row for each stretch of years or serials. */
record AnswerRows(Links links, Wording wording, RecordTexts texts) {

  List<AnswerRow> of(List<Line> lines) {
    List<AnswerRow> rows = new ArrayList<>();
    for (Line line : lines) {
      line.spans().forEach(span -> add(line, span, rows));
      for (Stretch stretch : line.timeline().yearless()) {
        String place = texts.get("place.no-year", wording.serials(stretch));
        rows.add(row(line, place, null, stretch.answer()));
      }
    }
    return rows;
  }

  private void add(Line line, YearSpan span, List<AnswerRow> rows) {
    String years = wording.years(span.firstYear(), span.lastYear());
    String expected = links.expected(line.variant().key(), span.firstYear(), null);
    if (span.answer().stretches().isEmpty()) {
      rows.add(row(line, years, expected, span.answer()));
    }
    for (Stretch stretch : span.answer().stretches()) {
      String place = texts.get("place.serials", years, wording.serials(stretch));
      rows.add(row(line, place, expected, stretch.answer()));
    }
  }

  private AnswerRow row(Line line, String place, @Nullable String expected, Answer answer) {
    return new AnswerRow(
        line.variant().designation(),
        links.variant(line.variant().key()),
        place,
        expected,
        answer.state().code(),
        wording.answer(answer),
        answer.evidence().grade().code(),
        answer.evidence().disputed());
  }
}
