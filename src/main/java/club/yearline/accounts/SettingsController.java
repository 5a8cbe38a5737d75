package club.yearline.accounts;

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

  SettingsController(Club club) {
    this.club = club;
  }

  @GetMapping("/admin/settings")
  String settings(Model model) {
    model.addAttribute("settings", club.settings());
    return "accounts/settings";
  }

  @PostMapping("/admin/settings")
  String change(@ModelAttribute SettingsForm form, Model model, RedirectAttributes after) {
    ClubSettings wanted = form.settings();
    if (!form.faults().isEmpty()) {
      model.addAttribute("settings", wanted);
      model.addAttribute("faults", form.faults());
      return "accounts/settings";
    }
    after.addFlashAttribute("said", club.change(wanted) ? "settings.changed" : "settings.stale");
    return "redirect:/admin/settings";
  }
}
