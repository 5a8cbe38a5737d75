package club.yearline.accounts;

import club.yearline.accounts.SecurityEvent.Kind;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The own password, and where one is signed in. */
@Controller
class SafetyController {

  private final Own own;
  private final Accounts accounts;
  private final Hashing hashing;
  private final Sessions sessions;
  private final Devices devices;
  private final Links links;
  private final SecurityLog log;
  private final Post post;

  SafetyController(
      Own own,
      Accounts accounts,
      Hashing hashing,
      Sessions sessions,
      Devices devices,
      Links links,
      SecurityLog log,
      Post post) {
    this.own = own;
    this.accounts = accounts;
    this.hashing = hashing;
    this.sessions = sessions;
    this.devices = devices;
    this.links = links;
    this.log = log;
    this.post = post;
  }

  @GetMapping("/account/password")
  String passwordForm(Actor actor, Model model) {
    model.addAttribute("shortest", shortest(own.account(actor)));
    return "accounts/password";
  }

  /** Every other session ends: whoever else knew the old password is out. */
  @PostMapping("/account/password")
  String changePassword(
      Actor actor,
      @RequestParam(defaultValue = "") String current,
      @RequestParam(defaultValue = "") String password,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model,
      RedirectAttributes after) {
    Account account = own.account(actor);
    Faults faults = own.faults();
    PasswordRules.fault(password, shortest(account), own.names(account))
        .ifPresentOrElse(
            key -> faults.at("password", key), () -> own.confirm(account, current, faults));
    if (!faults.isEmpty()) {
      response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
      model.addAttribute("faults", faults.byField());
      return passwordForm(actor, model);
    }
    accounts.changePassword(actor.id(), hashing.hash(password));
    links.revokeFor(actor.id());
    sessions.endAll(actor.id());
    devices.forgetAll(actor.id());
    sessions.begin(actor.id(), request, response);
    devices.remember(actor.id(), request, response);
    log.add(Kind.PASSWORD_CHANGED, actor.id(), ClientAddress.of(request));
    post.tell(account, "mail.password-changed");
    after.addFlashAttribute("said", "account.password.changed");
    return "redirect:/account";
  }

  @GetMapping("/account/sessions")
  String sessions(Actor actor, HttpServletRequest request, Model model) {
    HttpSession current = request.getSession(false);
    model.addAttribute("sessions", sessions.of(actor.id(), current));
    return "accounts/sessions";
  }

  @PostMapping("/account/sessions/{handle}/end")
  String end(
      Actor actor,
      @PathVariable String handle,
      HttpServletRequest request,
      RedirectAttributes after) {
    if (sessions.end(actor.id(), handle)) {
      log.add(Kind.SESSION_ENDED, actor.id(), ClientAddress.of(request));
    }
    after.addFlashAttribute("said", "sessions.ended");
    return "redirect:/account/sessions";
  }

  @PostMapping("/account/sessions/end-all")
  String endAll(Actor actor, HttpServletRequest request, HttpServletResponse response) {
    log.add(Kind.SIGNED_OUT_EVERYWHERE, actor.id(), ClientAddress.of(request));
    sessions.endAll(actor.id());
    sessions.end(request, response);
    return "redirect:/sign-in?new=out";
  }

  private static int shortest(Account account) {
    return account.hasSecondFactor() ? PasswordRules.BESIDE : PasswordRules.ALONE;
  }
}
