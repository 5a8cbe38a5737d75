package club.yearline.fleet;

import club.yearline.accounts.Actor;
import club.yearline.catalog.Links;
import club.yearline.catalog.Reading;
import club.yearline.catalog.Snapshots;
import club.yearline.uploads.Evidence;
import club.yearline.uploads.EvidenceDesk;
import club.yearline.uploads.NotTaken;
import club.yearline.web.Phrases;
import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

/** The form that records what was seen: first the feature, then the value and photographs of it. */
@Controller
class ObservationForms {

  private final Keeping keeping;
  private final Observing observing;
  private final ObservationViews views;
  private final EvidenceDesk desk;
  private final FleetPace pace;
  private final Snapshots snapshots;
  private final Phrases phrases;

  ObservationForms(
      Keeping keeping,
      Observing observing,
      ObservationViews views,
      EvidenceDesk desk,
      FleetPace pace,
      Snapshots snapshots,
      Phrases phrases) {
    this.keeping = keeping;
    this.observing = observing;
    this.views = views;
    this.desk = desk;
    this.pace = pace;
    this.snapshots = snapshots;
    this.phrases = phrases;
  }

  @GetMapping("/fleet/{id}/observe")
  String observe(
      @PathVariable long id,
      @RequestParam(required = false) @Nullable String feature,
      Actor actor,
      HttpServletRequest request,
      Model model) {
    Airframe airframe = keeping.own(actor, id);
    if (feature == null) {
      model.addAttribute("id", id);
      model.addAttribute("heading", views.heading(actor, airframe));
      model.addAttribute("chapters", views.features(airframe, links(request)));
      return "fleet/features";
    }
    return show(actor, airframe, ObservationForm.of(feature), request, model);
  }

  /** Nothing is recorded unless every photograph can be taken. */
  @PostMapping("/fleet/{id}/observations")
  String record(
      @PathVariable long id,
      ObservationForm form,
      @RequestParam(name = "photographs", required = false) @Nullable List<MultipartFile> sent,
      Actor actor,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model)
      throws IOException {
    Airframe airframe = keeping.own(actor, id);
    pace.observation(actor);
    Map<String, String> faults = new LinkedHashMap<>();
    try {
      Seen seen = read(form, List.of());
      Seen.requireRoom(chosen(sent).size());
      List<Evidence> photographs = take(chosen(sent), actor, faults);
      if (faults.isEmpty()) {
        once(actor, id, read(form, photographs), Tokens.of(form.token()));
        return FleetPages.to(id) + "#f-" + seen.feature();
      }
    } catch (Refusal refused) {
      if (refused.faults().isEmpty()) {
        throw refused;
      }
      refused
          .faults()
          .forEach(f -> faults.put(f.field(), phrases.of(f.key(), f.arguments().toArray())));
    }
    response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
    model.addAttribute("faults", faults);
    return show(actor, airframe, form, request, model);
  }

  /** Of two that arrive at one moment, the second finds what the first has stored. */
  private void once(Actor actor, long id, Seen seen, String token) {
    try {
      observing.observeOnce(actor, id, seen, token);
    } catch (DataIntegrityViolationException sentTwiceAtOneMoment) {
      observing.observeOnce(actor, id, seen, token);
    }
  }

  @PostMapping("/fleet/{id}/observations/{observation}/remove")
  String remove(@PathVariable long id, @PathVariable long observation, Actor actor) {
    observing.forget(actor, id, observation);
    return FleetPages.to(id);
  }

  private static Seen read(ObservationForm form, List<Evidence> photographs) {
    if (form.feature() == null || form.feature().isBlank()) {
      throw Refusal.missing("feature").at("feature", "fleet.fault.feature");
    }
    if (form.value() == null || form.value().isBlank()) {
      throw Refusal.missing("value").at("value", "fleet.fault.value-missing");
    }
    return new Seen(
        form.feature(),
        form.value().strip(),
        day(form.on()),
        form.observer(),
        form.note(),
        photographs);
  }

  private static LocalDate day(@Nullable String typed) {
    try {
      return LocalDate.parse(Objects.requireNonNullElse(typed, "").strip());
    } catch (DateTimeException e) {
      throw Refusal.unprocessable("fleet-day", Objects.requireNonNullElse(typed, ""))
          .at("on", "fleet.fault.day");
    }
  }

  private List<Evidence> take(List<MultipartFile> files, Actor actor, Map<String, String> faults)
      throws IOException {
    List<Evidence> taken = new ArrayList<>();
    List<String> wrong = new ArrayList<>();
    for (MultipartFile file : files) {
      pace.photograph(actor);
      String name = Objects.requireNonNullElse(file.getOriginalFilename(), "");
      try {
        taken.add(desk.photograph(name, file));
      } catch (NotTaken e) {
        String why = phrases.of("upload." + e.code(), e.arguments().toArray());
        wrong.add(phrases.of("fleet.fault.photograph", name, why));
      }
    }
    if (!wrong.isEmpty()) {
      faults.put("photographs", String.join(" ", wrong));
    }
    return taken;
  }

  /** A browser sends a nameless, empty file where none was chosen. */
  private static List<MultipartFile> chosen(@Nullable List<MultipartFile> sent) {
    return sent == null
        ? List.of()
        : sent.stream().filter(f -> !f.isEmpty() || !"".equals(f.getOriginalFilename())).toList();
  }

  private String show(
      Actor actor,
      Airframe airframe,
      ObservationForm form,
      HttpServletRequest request,
      Model model) {
    model.addAttribute("id", airframe.id());
    model.addAttribute("heading", views.heading(actor, airframe));
    model.addAttribute("form", form);
    model.addAttribute("feature", views.feature(airframe, form, links(request)));
    return "fleet/observe";
  }

  private Links links(HttpServletRequest request) {
    return Links.of(new Reading(snapshots.head(), null), request);
  }
}
