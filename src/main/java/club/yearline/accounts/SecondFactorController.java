package club.yearline.accounts;

import club.yearline.accounts.SecurityEvent.Kind;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The second factor of the own account: on, off, and the recovery codes. */
@Controller
class SecondFactorController {

  private static final String PAGE = "accounts/second-factor";
  private static final String CODES = "accounts/recovery-codes";
  private static final String HERE = "redirect:/account/second-factor";

  private final Own own;
  private final SecondFactors factors;
  private final SecurityLog log;
  private final Post post;

  SecondFactorController(Own own, SecondFactors factors, SecurityLog log, Post post) {
    this.own = own;
    this.factors = factors;
    this.log = log;
    this.post = post;
  }

  @GetMapping("/account/second-factor")
  String page(Actor actor, Model model) {
    Account account = own.account(actor);
    model.addAttribute("on", account.hasSecondFactor());
    model.addAttribute("codesLeft", factors.recoveryCodesLeft(account.id()));
    if (!account.hasSecondFactor()) {
      factors.secretOf(account).ifPresent(secret -> show(account, secret, model));
    }
    return PAGE;
  }

  private void show(Account account, String secret, Model model) {
    model.addAttribute("secret", secret);
    model.addAttribute(
        "square", QrCode.of(OneTimeCodes.address(post.clubName(), account.email(), secret)));
  }

  @PostMapping("/account/second-factor/prepare")
  String prepare(
      Actor actor,
      @RequestParam(defaultValue = "") String current,
      HttpServletResponse response,
      Model model) {
    Account account = own.account(actor);
    Faults faults = own.faults();
    own.confirm(account, current, faults);
    if (!faults.isEmpty()) {
      return wrong(actor, faults, response, model);
    }
    factors.prepare(account.id(), OneTimeCodes.newSecret());
    return HERE;
  }

  @PostMapping("/account/second-factor/on")
  String switchOn(
      Actor actor,
      @RequestParam(defaultValue = "") String code,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    Account account = own.account(actor);
    if (account.hasSecondFactor()) {
      return HERE;
    }
    if (!factors.accepts(account, code)) {
      return wrong(actor, own.faults().at("code", "sign-in.code-wrong"), response, model);
    }
    model.addAttribute("codes", factors.switchOn(account.id()));
    log.add(Kind.SECOND_FACTOR_ON, account.id(), ClientAddress.of(request));
    post.tell(account, "mail.second-factor-on");
    return CODES;
  }

  /** Without the second factor the password stands alone, and must be long enough for that. */
  @PostMapping("/account/second-factor/off")
  String switchOff(
      Actor actor,
      @RequestParam(defaultValue = "") String current,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model,
      RedirectAttributes after) {
    Account account = own.account(actor);
    Faults faults = own.faults();
    own.confirm(account, current, faults);
    Optional<String> fault = PasswordRules.fault(current, PasswordRules.ALONE, own.names(account));
    if (faults.isEmpty() && fault.isPresent()) {
      faults.at("current", "second-factor.password-too-weak");
    }
    if (!faults.isEmpty()) {
      return wrong(actor, faults, response, model);
    }
    factors.switchOff(account.id());
    log.add(Kind.SECOND_FACTOR_OFF, account.id(), ClientAddress.of(request));
    post.tell(account, "mail.second-factor-off");
    after.addFlashAttribute("said", "second-factor.is-off");
    return HERE;
  }

  @PostMapping("/account/second-factor/codes")
  String newCodes(
      Actor actor,
      @RequestParam(defaultValue = "") String current,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    Account account = own.account(actor);
    Faults faults = own.faults();
    own.confirm(account, current, faults);
    if (!faults.isEmpty() || !account.hasSecondFactor()) {
      return wrong(actor, faults, response, model);
    }
    model.addAttribute("codes", factors.newRecoveryCodes(account.id()));
    log.add(Kind.RECOVERY_CODES_RENEWED, account.id(), ClientAddress.of(request));
    return CODES;
  }

  private String wrong(Actor actor, Faults faults, HttpServletResponse response, Model model) {
    response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
    model.addAttribute("faults", faults.byField());
    return page(actor, model);
  }
}
