package club.yearline.inspection;

import club.yearline.print.Paper;
import club.yearline.print.PdfMaker;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.thymeleaf.context.Context;
import org.thymeleaf.spring6.SpringTemplateEngine;

/** The report of an inspection as PDF. */
@Component
class ReportPaper {

  /** With more photographs, a report would no longer be one or two sheets. */
  static final int MOST_PHOTOGRAPHS = 6;

  private static final int IN_A_ROW = 3;

  private final SpringTemplateEngine templates;
  private final PdfMaker maker;

  ReportPaper(SpringTemplateEngine templates, PdfMaker maker) {
    this.templates = templates;
    this.maker = maker;
  }

  /** A photograph on the report: small, and what it shows. */
  record Shot(String caption, byte[] bytes) {}

  /** A place for a photograph: its name among the pictures, and what it shows. */
  public record Cell(String src, String caption) {}

  byte[] pdf(Map<String, Object> words, List<Shot> shots, Paper sheet) {
    Map<String, Object> all = new HashMap<>(words);
    all.put("shots", rows(shots));
    String html = templates.process("inspection/report-pdf", new Context(Locale.ENGLISH, all));
    return maker.make(html, sheet, name -> Optional.of(shots.get(Integer.parseInt(name)).bytes()));
  }

  private static List<List<Cell>> rows(List<Shot> shots) {
    List<List<Cell>> rows = new ArrayList<>();
    for (int i = 0; i < Math.min(shots.size(), MOST_PHOTOGRAPHS); i++) {
      if (i % IN_A_ROW == 0) {
        rows.add(new ArrayList<>());
      }
      rows.get(rows.size() - 1).add(new Cell("picture:" + i, shots.get(i).caption()));
    }
    return rows;
  }
}
