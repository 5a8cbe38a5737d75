package club.yearline.inspection;

import club.yearline.accounts.Actor;
import club.yearline.catalog.Links;
import club.yearline.catalog.NamesPeople;
import club.yearline.catalog.Reading;
import club.yearline.catalog.Snapshots;
import club.yearline.fleet.InspectionPhotographs;
import club.yearline.fleet.Pictured;
import club.yearline.print.Paper;
import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** A saved inspection as PDF, with its photographs, as of the revision that it was held against. */
@Controller
@NamesPeople
class SavedReportController {

  private final Inspecting inspecting;
  private final SavedInspections saved;
  private final Snapshots snapshots;
  private final InspectionPhotographs photographs;
  private final ReportPaper paper;
  private final ReportWords words;
  private final FindingWords findingWords;

  SavedReportController(
      Inspecting inspecting,
      SavedInspections saved,
      Snapshots snapshots,
      InspectionPhotographs photographs,
      ReportPaper paper,
      ReportWords words,
      FindingWords findingWords) {
    this.inspecting = inspecting;
    this.saved = saved;
    this.snapshots = snapshots;
    this.photographs = photographs;
    this.paper = paper;
    this.words = words;
    this.findingWords = findingWords;
  }

  @GetMapping("/inspect/saved/{id}/report.pdf")
  ResponseEntity<byte[]> pdf(
      @PathVariable UUID id,
      @RequestParam(name = "paper", defaultValue = "") String sheet,
      Actor actor,
      HttpServletRequest request)
      throws IOException {
    SavedInspection known =
        saved.find(actor, id).orElseThrow(() -> Refusal.notFound("unknown-inspection", id));
    Reading then = new Reading(snapshots.at(known.revision()), known.revision());
    Inspecting.Outcome outcome = inspecting.of(Links.of(then, request), known.parameters());
    Inspecting.Made made = outcome.made();
    if (made == null) {
      throw Refusal.unprocessable("inspection-claim");
    }
    return ReportController.file(
        paper.pdf(
            words.of(outcome, made, request),
            shots(actor, id, made.inspection()),
            Paper.of(sheet)));
  }

  private List<ReportPaper.Shot> shots(Actor actor, UUID id, Inspection made) throws IOException {
    Map<String, String> captions = new HashMap<>();
    made.findings()
        .forEach(
            f ->
                captions.put(
                    f.feature().key(), f.feature().name() + ": " + findingWords.observed(f)));
    return photographs.of(actor, id, ReportPaper.MOST_PHOTOGRAPHS).stream()
        .map(p -> shot(p, captions))
        .toList();
  }

  private static ReportPaper.Shot shot(Pictured photograph, Map<String, String> captions) {
    String key = photograph.feature();
    return new ReportPaper.Shot(captions.getOrDefault(key, key), photograph.small());
  }
}
