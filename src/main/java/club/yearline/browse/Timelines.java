package club.yearline.browse;

import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Variant;
import club.yearline.effectivity.YearSpan;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Timelines of features over some variants and some years, for pages of other modules. */
@Component
public class Timelines {

  private final Wording wording;
  private final RecordTexts texts;

  Timelines(Wording wording, RecordTexts texts) {
    this.wording = wording;
    this.texts = texts;
  }

  /**
   * A part of a feature's timeline.
   *
   * @param chart the drawing, which leads nowhere; empty where no year of production is left
   * @param rows the same as a table
   * @param changes the changes that the variants have, oldest first
   */
  public record Part(Optional<FeatureChart> chart, List<Row> rows, List<Change> changes) {}

  /**
   * One stretch of years or serials.
   *
   * @param variant designation
   * @param place which years and serials
   * @param state code of the answer's state
   * @param answer the answer in words
   * @param disputed whether a source speaks against it
   */
  public record Row(String variant, String place, String state, String answer, boolean disputed) {}

  /** The part of a feature's timeline for some variants, from one year to another. */
  public Part part(Feature feature, List<Variant> variants, int first, int last, Links links) {
    List<Line> lines =
        Line.of(feature, links.reading().catalogue(), variants).stream()
            .map(line -> within(line, first, last))
            .toList();
    return new Part(
        FeatureDrawing.beside(feature, lines, lines, wording, texts),
        new AnswerRows(links, wording, texts)
            .of(lines).stream()
                .map(r -> new Row(r.variant(), r.place(), r.state(), r.answer(), r.disputed()))
                .toList(),
        ChangeOrder.merged(lines));
  }

  private static Line within(Line line, int first, int last) {
    List<YearSpan> spans =
        line.spans().stream()
            .filter(s -> s.lastYear() >= first && s.firstYear() <= last)
            .map(
                s ->
                    new YearSpan(
                        Math.max(first, s.firstYear()), Math.min(last, s.lastYear()), s.answer()))
            .toList();
    return new Line(line.family(), line.timeline(), spans);
  }
}
