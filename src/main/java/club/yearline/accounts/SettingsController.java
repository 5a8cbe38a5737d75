package club.yearline.accounts;

import club.yearline.web.Phrases;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** What the keeper decides for the club. */
@Controller
class SettingsController {

  private final Club club;
  private final Phrases phrases;
  private final SecurityLog log;

  SettingsController(Club club, Phrases phrases, SecurityLog log) {
    this.club = club;
    this.phrases = phrases;
    this.log = log;
  }

  @GetMapping("/admin/settings")
  String settings(Model model) {
    model.addAttribute("settings", club.settings());
    return "accounts/settings";
  }

  @PostMapping("/admin/settings")
  String change(
      Actor actor,
      @ModelAttribute SettingsForm form,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model,
      RedirectAttributes after) {
    Faults faults = new Faults(phrases);
    form.check(faults);
    ClubSettings wanted = form.settings();
    if (!faults.isEmpty()) {
      response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
      model.addAttribute("settings", wanted);
      model.addAttribute("faults", faults.byField());
      return "accounts/settings";
    }
    boolean changed = club.change(wanted);
    if (changed) {
      log.add(SecurityEvent.Kind.SETTINGS_CHANGED, actor.id(), ClientAddress.of(request));
    }
    after.addFlashAttribute("said", changed ? "settings.changed" : "settings.stale");
    return "redirect:/admin/settings";
  }
}
