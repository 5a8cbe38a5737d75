package club.yearline.accounts;

import club.yearline.accounts.SecurityEvent.Kind;
import club.yearline.web.Phrases;
import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Asking to join, where the club takes such requests. */
@Controller
class JoinController {

  private static final String PAGE = "accounts/ask-to-join";
  private static final int LONGEST_NOTE = 2000;
  private static final int AN_HOUR = 5;

  private final Club club;
  private final JoinRequests requests;
  private final Throttle throttle;
  private final SecurityLog log;
  private final Phrases phrases;

  JoinController(
      Club club, JoinRequests requests, Throttle throttle, SecurityLog log, Phrases phrases) {
    this.club = club;
    this.requests = requests;
    this.throttle = throttle;
    this.log = log;
    this.phrases = phrases;
  }

  @GetMapping("/join")
  String form(@RequestParam(defaultValue = "false") boolean asked, Model model) {
    model.addAttribute("open", club.takesJoinRequests());
    model.addAttribute("asked", asked);
    return PAGE;
  }

  @PostMapping("/join")
  String ask(
      @RequestParam(defaultValue = "") String name,
      @RequestParam(defaultValue = "") String email,
      @RequestParam(defaultValue = "") String note,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    if (!club.takesJoinRequests()) {
      throw Refusal.of(HttpStatus.FORBIDDEN, "by-invitation");
    }
    Faults faults = new Faults(phrases);
    Entry.checkName(name.strip(), faults);
    EmailAddress address = EmailAddress.of(email).orElse(null);
    if (address == null) {
      faults.at("email", "person.email.wrong");
    }
    if (note.length() > LONGEST_NOTE) {
      faults.at("note", "join.note.too-long");
    }
    if (address == null || !faults.isEmpty()) {
      response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
      model.addAttribute("faults", faults.byField()).addAttribute("open", true);
      model.addAttribute("name", name).addAttribute("email", email).addAttribute("note", note);
      return PAGE;
    }
    ClientAddress from = ClientAddress.of(request);
    throttle.require("join", from.network(), AN_HOUR);
    requests.add(name.strip(), address, note.strip());
    log.add(Kind.JOIN_ASKED, null, from);
    return "redirect:/join?asked=true";
  }
}
