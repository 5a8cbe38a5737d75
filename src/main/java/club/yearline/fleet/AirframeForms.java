package club.yearline.fleet;

import club.yearline.accounts.Actor;
import club.yearline.catalog.Snapshots;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Position;
import club.yearline.web.Phrases;
import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The form that registers an airframe, and the same to change what was said about it. */
@Controller
class AirframeForms {

  private static final String PAGE = "fleet/form";

  private final Keeping keeping;
  private final FleetPace pace;
  private final Snapshots snapshots;
  private final Wording wording;
  private final Phrases phrases;

  AirframeForms(
      Keeping keeping, FleetPace pace, Snapshots snapshots, Wording wording, Phrases phrases) {
    this.keeping = keeping;
    this.pace = pace;
    this.snapshots = snapshots;
    this.wording = wording;
    this.phrases = phrases;
  }

  @GetMapping("/fleet/new")
  String begin(@RequestParam(required = false) @Nullable String serial, Model model) {
    return show(AirframeForm.empty(serial), null, model);
  }

  @PostMapping("/fleet")
  String register(AirframeForm form, Actor actor, HttpServletResponse response, Model model) {
    pace.airframe(actor);
    return save(form, null, response, model, (position) -> once(actor, read(form, position), form));
  }

  /** Of two that arrive at one moment, the second finds what the first has stored. */
  private long once(Actor actor, NewAirframe airframe, AirframeForm form) {
    String token = Tokens.of(form.token());
    try {
      return keeping.registerOnce(actor, airframe, token);
    } catch (DataIntegrityViolationException sentTwiceAtOneMoment) {
      return keeping.registerOnce(actor, airframe, token);
    }
  }

  @GetMapping("/fleet/{id}/edit")
  String edit(@PathVariable long id, Actor actor, Model model) {
    return show(AirframeForm.of(keeping.own(actor, id)), id, model);
  }

  /** Whoever saves over what was changed meanwhile is told, and keeps what was typed. */
  @PostMapping("/fleet/{id}/edit")
  String edit(
      @PathVariable long id,
      AirframeForm form,
      Actor actor,
      HttpServletResponse response,
      Model model) {
    keeping.own(actor, id);
    try {
      return save(
          form,
          id,
          response,
          model,
          (position) -> keeping.describe(actor, id, version(form), read(form, position)));
    } catch (Refusal moved) {
      if (!moved.code().equals("airframe-changed")) {
        throw moved;
      }
      response.setStatus(HttpStatus.CONFLICT.value());
      model.addAttribute("notice", phrases.of("fleet.form.stale"));
      return show(form.at(keeping.own(actor, id).version()), id, model);
    }
  }

  private static int version(AirframeForm form) {
    Integer version = form.version();
    if (version == null) {
      throw Refusal.missing("version");
    }
    return version;
  }

  private static NewAirframe read(AirframeForm form, Position position) {
    return new NewAirframe(position, form.registration(), form.remarks());
  }

  private interface Saving {
    long save(Position position);
  }

  private String save(
      AirframeForm form,
      @Nullable Long id,
      HttpServletResponse response,
      Model model,
      Saving saving) {
    Identified identified = new Identifying(catalogue(), wording, phrases).of(form);
    Position position = identified.position();
    Map<String, String> faults = new LinkedHashMap<>(identified.faults());
    if (position != null) {
      try {
        return FleetPages.to(saving.save(position));
      } catch (Refusal refused) {
        if (refused.faults().isEmpty()) {
          throw refused;
        }
        refused
            .faults()
            .forEach(f -> faults.put(f.field(), phrases.of(f.key(), f.arguments().toArray())));
      }
    }
    response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
    model.addAttribute("faults", faults);
    model.addAttribute("advice", identified.advice());
    model.addAttribute("meant", identified.choices());
    return show(form, id, model);
  }

  private String show(AirframeForm form, @Nullable Long id, Model model) {
    model.addAttribute("form", form);
    model.addAttribute("id", id);
    model.addAttribute("menu", VariantChoices.of(catalogue()));
    if (!model.containsAttribute("meant")) {
      model.addAttribute("meant", List.of());
    }
    return PAGE;
  }

  private Catalogue catalogue() {
    return snapshots.head().catalogue();
  }
}
