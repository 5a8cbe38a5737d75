package club.yearline.corrections;

import club.yearline.accounts.Actor;
import club.yearline.catalog.Chapters;
import club.yearline.catalog.Snapshots;
import club.yearline.citation.Stance;
import club.yearline.effectivity.EntryKind;
import club.yearline.tables.Sheet;
import club.yearline.web.Choice;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The form for what a correction is about and what it stands on. */
@Controller
class GroundPages {

  private static final int ROWS = 12;
  private static final int LONGEST = 400;

  private final CorrectionViews views;
  private final Drafting drafting;
  private final Snapshots snapshots;
  private final Chapters chapters;
  private final Phrases phrases;

  GroundPages(
      CorrectionViews views,
      Drafting drafting,
      Snapshots snapshots,
      Chapters chapters,
      Phrases phrases) {
    this.views = views;
    this.drafting = drafting;
    this.snapshots = snapshots;
    this.chapters = chapters;
    this.phrases = phrases;
  }

  /**
   * A row of the form.
   *
   * @param source as typed
   * @param locator as typed
   * @param stance as chosen
   * @param note as typed
   */
  record Row(String source, String locator, String stance, String note) {

    static final Row EMPTY = new Row("", "", Stance.SUPPORTS.code(), "");

    boolean isEmpty() {
      return source.isEmpty() && locator.isEmpty() && note.isEmpty();
    }
  }

  @GetMapping("/corrections/{id}/sources")
  String form(@PathVariable long id, Actor actor, Model model) {
    CorrectionView correction = views.of(actor, id, null, 1);
    List<Row> rows = new ArrayList<>();
    correction
        .grounds()
        .forEach(
            g ->
                rows.add(
                    new Row(
                        g.source(), g.locator(), g.stance(), g.note() == null ? "" : g.note())));
    return show(correction, correction.title(), rows, Map.of(), model);
  }

  @PostMapping("/corrections/{id}/sources")
  String save(
      @PathVariable long id,
      @RequestParam int version,
      @RequestParam MultiValueMap<String, String> typed,
      Actor actor,
      Model model) {
    String title = EntryForm.text(typed, "title");
    List<Row> rows = rows(typed);
    Map<String, String> faults = faults(title, rows, views.sources(actor, id));
    if (!faults.isEmpty()) {
      return show(views.of(actor, id, null, 1), title, rows, faults, model);
    }
    drafting.describe(actor, id, version, title, rows.stream().map(GroundPages::ground).toList());
    return "redirect:/corrections/" + id;
  }

  private static Ground ground(Row row) {
    Stance stance = row.stance().equals(Stance.DISPUTES.code()) ? Stance.DISPUTES : Stance.SUPPORTS;
    return Ground.of(row.source(), row.locator(), stance, row.note().isEmpty() ? null : row.note());
  }

  private static List<Row> rows(MultiValueMap<String, String> typed) {
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < ROWS; i++) {
      String at = "ground." + i + ".";
      Row row =
          new Row(
              EntryForm.text(typed, at + "source"),
              EntryForm.text(typed, at + "locator"),
              EntryForm.text(typed, at + "stance"),
              EntryForm.text(typed, at + "note"));
      if (!row.isEmpty()) {
        rows.add(row);
      }
    }
    return rows;
  }

  private Map<String, String> faults(String title, List<Row> rows, Set<String> sources) {
    Map<String, String> faults = new HashMap<>();
    if (title.isEmpty()) {
      faults.put("title", phrases.of("corrections.fault.title"));
    } else if (title.length() > FormPages.LONGEST_TITLE) {
      faults.put("title", phrases.of("corrections.fault.title-long", FormPages.LONGEST_TITLE));
    }
    for (int i = 0; i < rows.size(); i++) {
      String at = "ground." + i + ".";
      Row row = rows.get(i);
      if (!sources.contains(row.source())) {
        faults.put(at + "source", phrases.of("corrections.fault.unknown-source"));
      }
      if (row.locator().isEmpty()) {
        faults.put(at + "locator", phrases.of("corrections.fault.no-locator"));
      }
      check(at + "locator", row.locator(), faults);
      check(at + "note", row.note(), faults);
    }
    return faults;
  }

  private void check(String field, String text, Map<String, String> faults) {
    if (text.length() > LONGEST) {
      faults.put(field, phrases.of("corrections.fault.text-long", LONGEST));
    }
  }

  private String show(
      CorrectionView correction,
      String title,
      List<Row> rows,
      Map<String, String> faults,
      Model model) {
    List<Row> shown = new ArrayList<>(rows);
    int wanted = Math.min(ROWS, rows.size() + 2);
    while (shown.size() < wanted) {
      shown.add(Row.EMPTY);
    }
    Sheet nothing = Sheet.blank(EntryKind.SOURCE, "");
    model.addAttribute("correction", correction);
    model.addAttribute("title", title);
    model.addAttribute("rows", shown);
    model.addAttribute("faults", faults);
    model.addAttribute("lists", Known.in(snapshots.head().catalogue(), chapters, nothing).lists());
    model.addAttribute("stances", stances());
    return "corrections/sources";
  }

  private List<Choice> stances() {
    return Arrays.stream(Stance.values())
        .map(s -> new Choice(s.code(), phrases.of("corrections.word.stance." + s.code())))
        .toList();
  }
}
