package club.yearline.accounts;

import club.yearline.accounts.SecurityEvent.Kind;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The passkeys of the own account. */
@Controller
class PasskeyController {

  private static final String PAGE = "accounts/passkeys";
  private static final String HERE = "redirect:/account/passkeys";

  /** More devices than a person has. */
  private static final int MOST = 20;

  private final Own own;
  private final Passkeys passkeys;
  private final PasskeyParty party;
  private final PasskeyCeremony ceremony;
  private final PasskeyBrowser browser;
  private final SecurityLog log;
  private final Post post;

  PasskeyController(
      Own own,
      Passkeys passkeys,
      PasskeyParty party,
      PasskeyCeremony ceremony,
      PasskeyBrowser browser,
      SecurityLog log,
      Post post) {
    this.own = own;
    this.passkeys = passkeys;
    this.party = party;
    this.ceremony = ceremony;
    this.browser = browser;
    this.log = log;
    this.post = post;
  }

  @GetMapping("/account/passkeys")
  String page(Actor actor, Model model) {
    Account account = own.account(actor);
    model.addAttribute("passkeys", passkeys.of(account.id()));
    model.addAttribute("asksCode", account.hasSecondFactor());
    party.site().ifPresent(site -> model.addAttribute("passkeySite", site));
    return PAGE;
  }

  /** What opens an account alone is added by whoever has just proved both factors. */
  @PostMapping("/account/passkeys/prepare")
  String prepare(
      Actor actor,
      @RequestParam(defaultValue = "") String name,
      @RequestParam(defaultValue = "") String current,
      @RequestParam(defaultValue = "") String code,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    Account account = own.account(actor);
    Faults faults = own.faults();
    checkName(name.strip(), faults);
    checkRoom(account, faults);
    if (faults.isEmpty()) {
      own.confirm(account, current, faults);
    }
    if (faults.isEmpty() && account.hasSecondFactor()) {
      own.confirmCode(account, code, ClientAddress.of(request), faults);
    }
    if (!faults.isEmpty()) {
      model.addAttribute("typedName", name);
      return wrong(actor, faults, response, model);
    }
    model.addAttribute("name", name.strip());
    model.addAttribute("question", ceremony.askToMake(account, browser.of(request)));
    party.site().ifPresent(site -> model.addAttribute("passkeySite", site));
    return "accounts/passkey";
  }

  @PostMapping("/account/passkeys")
  String add(
      Actor actor,
      @RequestParam(defaultValue = "") String name,
      @RequestParam(defaultValue = "") String credential,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model,
      RedirectAttributes after) {
    Account account = own.account(actor);
    Faults faults = own.faults();
    checkName(name.strip(), faults);
    checkRoom(account, faults);
    if (faults.isEmpty()) {
      try {
        ceremony.keep(account, credential, name.strip(), browser.of(request));
      } catch (PasskeyCeremony.Refused e) {
        faults.at("credential", "passkeys.refused");
      }
    }
    if (!faults.isEmpty()) {
      return wrong(actor, faults, response, model);
    }
    log.add(Kind.PASSKEY_ADDED, account.id(), ClientAddress.of(request));
    post.tell(account, "mail.passkey-added");
    after.addFlashAttribute("said", "passkeys.added");
    return HERE;
  }

  @PostMapping("/account/passkeys/{id}/remove")
  String remove(
      Actor actor,
      @PathVariable long id,
      @RequestParam(defaultValue = "") String current,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model,
      RedirectAttributes after) {
    Account account = own.account(actor);
    Faults faults = own.faults();
    own.confirm(account, current, faults);
    if (!faults.isEmpty()) {
      model.addAttribute("faulty", id);
      return wrong(actor, faults, response, model);
    }
    if (passkeys.remove(account.id(), id)) {
      log.add(Kind.PASSKEY_REMOVED, account.id(), ClientAddress.of(request));
      post.tell(account, "mail.passkey-removed");
    }
    after.addFlashAttribute("said", "passkeys.removed");
    return HERE;
  }

  private void checkRoom(Account account, Faults faults) {
    if (party.site().isEmpty()) {
      faults.at("name", "passkeys.off");
    } else if (passkeys.of(account.id()).size() >= MOST) {
      faults.at("name", "passkeys.too-many");
    }
  }

  private static void checkName(String name, Faults faults) {
    if (name.isEmpty()) {
      faults.at("name", "passkeys.name.missing");
    } else if (name.length() > Passkey.LONGEST_NAME) {
      faults.at("name", "passkeys.name.too-long");
    } else if (name.chars().anyMatch(Character::isISOControl)) {
      faults.at("name", "person.name.control");
    }
  }

  private String wrong(Actor actor, Faults faults, HttpServletResponse response, Model model) {
    response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
    model.addAttribute("faults", faults.byField());
    return page(actor, model);
  }
}
