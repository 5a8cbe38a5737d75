package club.yearline.accounts;

import club.yearline.accounts.OneTimeLink.Kind;
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

/** A person's own account: who it is, where to reach, and closing it. */
@Controller
class AccountController {

  private static final String PAGE = "accounts/account";
  private static final String HERE = "redirect:/account";

  private final Own own;
  private final Accounts accounts;
  private final Membership membership;
  private final Links links;
  private final Post post;
  private final Addresses addresses;
  private final Sessions sessions;

  AccountController(
      Own own,
      Accounts accounts,
      Membership membership,
      Links links,
      Post post,
      Addresses addresses,
      Sessions sessions) {
    this.own = own;
    this.accounts = accounts;
    this.membership = membership;
    this.links = links;
    this.post = post;
    this.addresses = addresses;
    this.sessions = sessions;
  }

  @GetMapping("/account")
  String account(Actor actor, Model model) {
    model.addAttribute("account", own.account(actor));
    return PAGE;
  }

  @PostMapping("/account/name")
  String rename(
      Actor actor,
      @RequestParam(defaultValue = "") String name,
      HttpServletResponse response,
      Model model,
      RedirectAttributes after) {
    Faults faults = own.faults();
    Entry.checkName(name.strip(), faults);
    if (!faults.isEmpty()) {
      model.addAttribute("typedName", name);
      return wrong(actor, faults, response, model);
    }
    accounts.changeName(actor.id(), name.strip());
    after.addFlashAttribute("said", "account.name.changed");
    return HERE;
  }

  /** With mail, the new address counts once its owner has followed the link sent there. */
  @PostMapping("/account/email")
  String changeEmail(
      Actor actor,
      @RequestParam(defaultValue = "") String email,
      @RequestParam(defaultValue = "") String current,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model,
      RedirectAttributes after) {
    Account account = own.account(actor);
    Faults faults = own.faults();
    EmailAddress address = EmailAddress.of(email).orElse(null);
    if (address == null) {
      faults.at("email", "person.email.wrong");
    } else {
      own.confirm(account, current, faults);
    }
    if (address == null || !faults.isEmpty()) {
      model.addAttribute("typedEmail", email);
      return wrong(actor, faults, response, model);
    }
    if (post.isSet()) {
      post.later(() -> askAndTell(account, address));
      after.addFlashAttribute("said", "account.email.sent");
    } else {
      membership.changeEmail(null, account.id(), address, ClientAddress.of(request));
      after.addFlashAttribute("said", "account.email.changed");
    }
    return HERE;
  }

  @GetMapping("/account/email/{secret}")
  String confirmEmailForm(Actor actor, @PathVariable String secret, Model model) {
    OneTimeLink link = links.usableBy(actor.id(), secret, Kind.EMAIL);
    model.addAttribute("email", link.email());
    return "accounts/confirm-email";
  }

  @PostMapping("/account/email/{secret}")
  String confirmEmail(
      Actor actor,
      @PathVariable String secret,
      HttpServletRequest request,
      RedirectAttributes after) {
    OneTimeLink link = links.usableBy(actor.id(), secret, Kind.EMAIL);
    EmailAddress email =
        EmailAddress.of(link.email())
            .orElseThrow(() -> new IllegalStateException("A link to no address"));
    membership.changeEmail(link, actor.id(), email, ClientAddress.of(request));
    after.addFlashAttribute("said", "account.email.changed");
    return HERE;
  }

  @GetMapping("/account/close")
  String closeForm(Actor actor) {
    return "accounts/close";
  }

  @PostMapping("/account/close")
  String close(
      Actor actor,
      @RequestParam(defaultValue = "") String current,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    Account account = own.account(actor);
    Faults faults = own.faults();
    own.confirm(account, current, faults);
    if (!faults.isEmpty()) {
      response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
      model.addAttribute("faults", faults.byField());
      return "accounts/close";
    }
    membership.close(actor, account, ClientAddress.of(request));
    sessions.end(request, response);
    return "redirect:/";
  }

  private void askAndTell(Account account, EmailAddress address) {
    String path = links.make(Kind.EMAIL, account.id(), address.text(), account.id());
    post.send(address, "mail.email", addresses.publicly(path));
    EmailAddress.of(account.email()).ifPresent(old -> post.send(old, "mail.email-changing"));
  }

  private String wrong(Actor actor, Faults faults, HttpServletResponse response, Model model) {
    response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
    model.addAttribute("faults", faults.byField());
    return account(actor, model);
  }
}
