package club.yearline.expected;

import club.yearline.catalog.Chapters;
import club.yearline.catalog.Links;
import club.yearline.catalog.Reading;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Question;
import club.yearline.web.Phrases;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.ExtendedModelMap;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/**
 * What the page {@code /expected} is measured against, with the same framework and filters, from
 * texts that were taken once from a real answer: a page with the same frame and as many rows, each
 * with all that a row of the real page shows, in a template of its own; the real page's template;
 * and a plain table without our frame, with a row for everything that the real page lists
 * (features, values, retrofits, changes, citations, notes). They lie under the same path so that
 * the same filters apply.
 */
@Controller
class BarePage {

  private final ExpectedController real;
  private final Chapters chapters;
  private final Wording wording;
  private final Phrases phrases;
  private List<Row> rows = List.of();
  private List<Cells> everything = List.of();
  private Map<String, Object> constant = Map.of();

  BarePage(ExpectedController real, Chapters chapters, Wording wording, Phrases phrases) {
    this.real = real;
    this.chapters = chapters;
    this.wording = wording;
    this.phrases = phrases;
  }

  /** One row of the bare table; public for compiled expressions, as the real page's rows are. */
  public record Cells(String href, String name, String state, String text) {}

  /** Takes the texts of a real answer, once, to be printed ever after. */
  @GetMapping("/expected/bare/prepare")
  synchronized ResponseEntity<String> prepare(
      @RequestParam String serial,
      Reading reading,
      HttpServletRequest request,
      HttpServletResponse response) {
    Located located = reading.catalogue().locate(new Question(null, null, serial));
    if (!(located instanceof Located.Found found)) {
      return ResponseEntity.notFound().build();
    }
    Sheet sheet =
        new Sheets(chapters, Links.of(reading, request), wording, phrases).of(found, false);
    rows = sheet.groups().stream().flatMap(g -> g.rows().stream()).toList();
    everything = rows.stream().flatMap(r -> lines(r).stream()).toList();
    Model model = new ExtendedModelMap();
    real.expected(new Asked(serial, null, null), "chapter", reading, request, response, model);
    constant = model.asMap();
    return ResponseEntity.ok(rows.size() + " features, " + everything.size() + " lines\n");
  }

  @GetMapping("/expected/bare/rows")
  String rows(Model model) {
    model.addAttribute("title", constant.get("title"));
    model.addAttribute("revision", constant.get("revision"));
    model.addAttribute("rows", rows);
    return "bare/page";
  }

  @GetMapping("/expected/bare/same")
  String same(Model model) {
    model.addAllAttributes(constant);
    return "expected/expected";
  }

  @GetMapping("/expected/bare/lines")
  String everything(Model model) {
    model.addAttribute("rows", everything);
    return "bare/rows";
  }

  private static List<Cells> lines(Row row) {
    List<Cells> lines = new ArrayList<>();
    lines.add(new Cells(row.href(), row.name(), row.word(), row.proof().grade()));
    for (Row.Line line : row.lines()) {
      line.items().forEach(i -> lines.add(line(row, i.text(), String.valueOf(i.fit()))));
    }
    row.fittings().forEach(f -> lines.add(line(row, f.value(), f.whom())));
    row.neighbours().forEach(n -> lines.add(line(row, n, row.word())));
    row.proof().deciding().forEach(d -> lines.add(new Cells(d.href(), d.title(), "", d.when())));
    row.proof()
        .cited()
        .forEach(c -> lines.add(new Cells(c.href(), c.title(), c.stance(), c.where())));
    return lines;
  }

  private static Cells line(Row row, String name, String text) {
    return new Cells(row.href(), name, "", text);
  }
}
