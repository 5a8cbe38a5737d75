package club.yearline.accounts;

import club.yearline.accounts.SecurityEvent.Kind;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Signing in with a passkey: it stands for the password and for the second factor. */
@Controller
class PasskeySignInController {

  /** Each costs a row for ten minutes. */
  private static final int PER_NETWORK = 60;

  private static final Duration PER_NETWORK_PERIOD = Duration.ofMinutes(10);

  private final SignIn signIn;
  private final PasskeyParty party;
  private final PasskeyCeremony ceremony;
  private final Throttle throttle;
  private final PasskeyBrowser browser;
  private final Doorstep doorstep;

  PasskeySignInController(
      SignIn signIn,
      PasskeyParty party,
      PasskeyCeremony ceremony,
      Throttle throttle,
      PasskeyBrowser browser,
      Doorstep doorstep) {
    this.signIn = signIn;
    this.party = party;
    this.ceremony = ceremony;
    this.throttle = throttle;
    this.browser = browser;
    this.doorstep = doorstep;
  }

  /** What the device is to sign, for the script of the page. */
  @PostMapping("/sign-in/passkey/question")
  ResponseEntity<String> question(HttpServletRequest request) {
    String network = ClientAddress.of(request).network();
    if (party.site().isEmpty()) {
      return ResponseEntity.notFound().build();
    }
    if (!throttle.allows("passkey-question", network, PER_NETWORK, PER_NETWORK_PERIOD)) {
      return ResponseEntity.status(HttpStatus.TOO_MANY_REQUESTS).build();
    }
    return ResponseEntity.ok()
        .contentType(MediaType.APPLICATION_JSON)
        .body(ceremony.askToSign(browser.of(request)));
  }

  @PostMapping("/sign-in/passkey")
  String signIn(
      @RequestParam(defaultValue = "") String credential,
      @ModelAttribute Doorstep.Errand errand,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    SignIn.Outcome outcome =
        signIn.withPasskey(credential, browser.of(request), ClientAddress.of(request));
    if (outcome instanceof SignIn.Outcome.Right right) {
      return doorstep.in(
          right.account(),
          Kind.SIGNED_IN_BY_PASSKEY,
          ReturnPath.orElse(errand.to(), "/account"),
          KeptForm.read(errand.kept()),
          request,
          response);
    }
    String trouble = doorstep.trouble(outcome, "sign-in.passkey.wrong", response);
    return doorstep.again(errand, trouble, model);
  }
}
