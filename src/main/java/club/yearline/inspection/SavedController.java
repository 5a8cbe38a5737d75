package club.yearline.inspection;

import club.yearline.accounts.Actor;
import club.yearline.catalog.Links;
import club.yearline.catalog.NamesPeople;
import club.yearline.catalog.Reading;
import club.yearline.catalog.Snapshots;
import club.yearline.web.Phrases;
import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseBody;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.multipart.MultipartHttpServletRequest;
import org.springframework.web.util.WebUtils;

/** Inspections that a member saves, reopens and holds against the catalogue of today. */
@Controller
@NamesPeople
class SavedController {

  private static final String PHOTOGRAPHS = "photo.";

  private final Inspecting inspecting;
  private final Saving saving;
  private final SavedInspections saved;
  private final Snapshots snapshots;
  private final Phrases phrases;

  SavedController(
      Inspecting inspecting,
      Saving saving,
      SavedInspections saved,
      Snapshots snapshots,
      Phrases phrases) {
    this.inspecting = inspecting;
    this.saving = saving;
    this.saved = saved;
    this.snapshots = snapshots;
    this.phrases = phrases;
  }

  /** What a script needs before it sends what was kept on a telephone: the token is of now. */
  record Token(String header, String token, String person) {}

  @GetMapping("/inspect/token")
  @ResponseBody
  Token token(Actor actor, CsrfToken token) {
    return new Token(token.getHeaderName(), token.getToken(), actor.name());
  }

  /** Saves; whatever is sent again under its number is saved already. */
  @PostMapping("/inspect/saved/{id}")
  String save(
      @PathVariable UUID id,
      @RequestParam(required = false) @Nullable String on,
      @RequestParam(required = false) @Nullable String registration,
      Actor actor,
      Reading reading,
      HttpServletRequest request)
      throws IOException {
    Inspecting.Outcome outcome = inspecting.of(reading, request);
    if (outcome.made() == null) {
      throw Refusal.unprocessable("inspection-claim");
    }
    if (outcome.sent().isFaulty()) {
      throw Refusal.unprocessable("inspection-faulty", faults(outcome.sent()));
    }
    saving.save(
        actor,
        reading.revision(),
        outcome.made().found(),
        outcome.sent().seen(),
        new Saving.Wanted(id, day(on), registration, photographs(request)));
    return "redirect:/inspect/saved/" + id;
  }

  @GetMapping("/inspect/saved/{id}")
  String saved(@PathVariable UUID id, Actor actor, HttpServletRequest request, Model model) {
    SavedInspection known =
        saved.find(actor, id).orElseThrow(() -> Refusal.notFound("unknown-inspection", id));
    Reading then = new Reading(snapshots.at(known.revision()), known.revision());
    Reading now = new Reading(snapshots.head(), null);
    Inspecting.Outcome before = again(known, then, request);
    Inspecting.Outcome after = again(known, now, request);
    model.addAttribute("revision", known.revision());
    model.addAttribute("known", known);
    model.addAttribute("airframeHref", request.getContextPath() + "/fleet/" + known.airframe());
    model.addAttribute("report", before.made() == null ? null : before.made().report());
    model.addAttribute("changed", changed(before, after));
    model.addAttribute("nowRevision", now.revision());
    model.addAttribute(
        "nowHref", after.addresses().to(known.variant(), known.year(), known.serial()));
    model.addAttribute(
        "thenHref", before.addresses().to(known.variant(), known.year(), known.serial()));
    model.addAttribute(
        "pdfHref", request.getContextPath() + "/inspect/saved/" + id + "/report.pdf");
    return "inspection/saved";
  }

  private Inspecting.Outcome again(
      SavedInspection known, Reading reading, HttpServletRequest request) {
    return inspecting.of(Links.of(reading, request), known.parameters());
  }

  /** What the catalogue says otherwise today, in words. */
  private List<String> changed(Inspecting.Outcome before, Inspecting.Outcome after) {
    if (before.made() == null || after.made() == null) {
      return List.of(phrases.of("inspect.changed.claim"));
    }
    Report then = before.made().report();
    Report now = after.made().report();
    Map<String, String> words = new HashMap<>();
    then.lines().forEach(l -> words.put(l.name(), l.word()));
    List<String> changed =
        new ArrayList<>(
            now.lines().stream()
                .filter(l -> !l.word().equals(words.get(l.name())))
                .map(l -> changed(l.name(), words.get(l.name()), l.word()))
                .toList());
    if (!then.verdict().equals(now.verdict())) {
      changed.add(
          0, changed(phrases.of("inspect.verdict"), then.verdictTitle(), now.verdictTitle()));
    }
    return changed;
  }

  private String changed(String what, @Nullable String then, String now) {
    return phrases.of(
        "inspect.changed.line",
        what,
        then == null ? phrases.of("inspect.changed.unknown") : then,
        now);
  }

  private static String faults(Sent sent) {
    return String.join(
        ", ", Stream.concat(sent.typed().values().stream(), sent.leftOut().stream()).toList());
  }

  private static LocalDate day(@Nullable String on) {
    if (on == null || on.isBlank()) {
      return LocalDate.now(ZoneOffset.UTC);
    }
    try {
      return LocalDate.parse(on.strip());
    } catch (DateTimeParseException e) {
      throw Refusal.unprocessable("fleet-day", on).at("on", "fleet.fault.day");
    }
  }

  /** A browser sends a nameless, empty file where none was chosen. */
  private static Map<String, List<MultipartFile>> photographs(HttpServletRequest request) {
    Map<String, List<MultipartFile>> photographs = new HashMap<>();
    MultipartHttpServletRequest parts =
        WebUtils.getNativeRequest(request, MultipartHttpServletRequest.class);
    if (parts != null) {
      MultiValueMap<String, MultipartFile> files = parts.getMultiFileMap();
      files.forEach(
          (name, all) -> {
            List<MultipartFile> chosen =
                all.stream()
                    .filter(f -> !f.isEmpty() || !"".equals(f.getOriginalFilename()))
                    .toList();
            if (name.startsWith(PHOTOGRAPHS) && !chosen.isEmpty()) {
              photographs.put(name.substring(PHOTOGRAPHS.length()), chosen);
            }
          });
    }
    return photographs;
  }
}
