package club.yearline.accounts;

import club.yearline.accounts.SecurityEvent.Kind;
import club.yearline.web.Phrases;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** What happens on the doorstep, by whatever key somebody comes: in, or once more. */
@Component
class Doorstep {

  static final String PAGE = "accounts/sign-in";

  private final Sessions sessions;
  private final Devices devices;
  private final SecurityLog log;
  private final Phrases phrases;
  private final PasskeyParty passkeys;

  Doorstep(
      Sessions sessions, Devices devices, SecurityLog log, Phrases phrases, PasskeyParty passkeys) {
    this.sessions = sessions;
    this.devices = devices;
    this.log = log;
    this.phrases = phrases;
    this.passkeys = passkeys;
  }

  /** What the sign-in page is for, beside signing in: where to go then, and what was typed. */
  record Errand(@Nullable String to, @Nullable String kept) {}

  /** Lets somebody in; the view to go on with. */
  String in(
      Account account,
      Kind how,
      String to,
      Optional<KeptForm> kept,
      HttpServletRequest request,
      HttpServletResponse response) {
    HttpSession session = sessions.begin(account.id(), request, response);
    devices.remember(account.id(), request, response);
    log.add(how, account.id(), ClientAddress.of(request));
    kept.ifPresent(form -> session.setAttribute(SignInController.KEPT, form));
    return "redirect:" + (kept.isPresent() ? "/sign-in/resume" : to);
  }

  /** What is said to who is not let in, with the status of the answer. */
  String trouble(SignIn.Outcome outcome, String wrong, HttpServletResponse response) {
    if (outcome instanceof SignIn.Outcome.Wait wait) {
      String seconds = Long.toString(wait.time().toSeconds());
      response.setStatus(HttpStatus.TOO_MANY_REQUESTS.value());
      response.setHeader(HttpHeaders.RETRY_AFTER, seconds);
      return phrases.of("sign-in.wait", seconds);
    }
    response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
    return phrases.of(wrong);
  }

  /** The sign-in page. */
  String page(@Nullable String to, Model model) {
    model.addAttribute("to", ReturnPath.orElse(to, ""));
    passkeys.site().ifPresent(site -> model.addAttribute("passkeySite", site));
    return PAGE;
  }

  /** The sign-in page once more. */
  String again(Errand errand, String trouble, Model model) {
    model.addAttribute("trouble", trouble);
    KeptForm.read(errand.kept()).ifPresent(kept -> model.addAttribute("kept", kept.written()));
    return page(errand.to(), model);
  }
}
