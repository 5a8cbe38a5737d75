package club.yearline.accounts;

import club.yearline.web.Pages;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The log of security events, for the keeper. */
@Controller
class LogController {

  private static final int PAGE_SIZE = 100;

  private final SecurityLog log;
  private final People people;

  LogController(SecurityLog log, People people) {
    this.log = log;
    this.people = people;
  }

  @GetMapping("/admin/log")
  String log(@RequestParam(defaultValue = "1") int page, Model model) {
    int count = (int) Math.max(1, (log.size() + PAGE_SIZE - 1) / PAGE_SIZE);
    int shown = Math.max(1, Math.min(page, count));
    List<SecurityEvent> events = log.page(shown, PAGE_SIZE);
    List<Long> ids =
        events.stream()
            .flatMap(e -> Stream.of(e.person(), e.about()))
            .filter(Objects::nonNull)
            .distinct()
            .toList();
    model.addAttribute("events", events);
    model.addAttribute("names", people.namesOf(ids));
    model.addAttribute("pages", new Pages("/admin/log", shown, count));
    return "accounts/log";
  }
}
