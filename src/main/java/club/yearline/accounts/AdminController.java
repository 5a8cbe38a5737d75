package club.yearline.accounts;

import club.yearline.accounts.OneTimeLink.Kind;
import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.Locale;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** People and roles, for the keeper. */
@Controller
class AdminController {

  private static final String PERSON = "accounts/person";

  private final Accounts accounts;
  private final Membership membership;
  private final Passkeys passkeys;
  private final Links links;
  private final Sessions sessions;
  private final Addresses addresses;
  private final SecurityLog log;

  AdminController(
      Accounts accounts,
      Membership membership,
      Passkeys passkeys,
      Links links,
      Sessions sessions,
      Addresses addresses,
      SecurityLog log) {
    this.accounts = accounts;
    this.membership = membership;
    this.passkeys = passkeys;
    this.links = links;
    this.sessions = sessions;
    this.addresses = addresses;
    this.log = log;
  }

  @GetMapping("/admin")
  String overview() {
    return "accounts/admin";
  }

  @GetMapping("/admin/people")
  String people(Model model) {
    model.addAttribute("people", accounts.all());
    return "accounts/people";
  }

  @GetMapping("/admin/people/{id}")
  String person(@PathVariable long id, Model model) {
    model.addAttribute("person", account(id));
    model.addAttribute("passkeys", passkeys.of(id).size());
    model.addAttribute("roles", Arrays.asList(Role.values()));
    return PERSON;
  }

  @PostMapping("/admin/people/{id}/role")
  String changeRole(
      Actor actor,
      @PathVariable long id,
      @RequestParam String role,
      HttpServletRequest request,
      RedirectAttributes after) {
    Role wanted =
        Arrays.stream(Role.values())
            .filter(r -> r.name().toLowerCase(Locale.ROOT).equals(role))
            .findFirst()
            .orElseThrow(() -> Refusal.notUnderstood("not-understood"));
    membership.changeRole(actor, account(id), wanted, ClientAddress.of(request));
    after.addFlashAttribute("said", "people.role.changed");
    return "redirect:/admin/people/" + id;
  }

  /** The link is shown in this answer and nowhere else: the keeper passes it on. */
  @PostMapping("/admin/people/{id}/reset")
  String resetLink(
      Actor actor,
      @PathVariable long id,
      @RequestParam(defaultValue = "false") boolean withoutSecondFactor,
      HttpServletRequest request,
      Model model) {
    Account account = account(id);
    String path = links.make(Kind.RESET, account.id(), null, actor.id(), withoutSecondFactor);
    log.add(SecurityEvent.Kind.RESET_LINK_MADE, actor.id(), id, ClientAddress.of(request), null);
    model.addAttribute("link", addresses.here(request, path));
    return person(id, model);
  }

  @PostMapping("/admin/people/{id}/sign-out")
  String signOut(
      Actor actor, @PathVariable long id, HttpServletRequest request, RedirectAttributes after) {
    sessions.endAll(account(id).id());
    log.add(
        SecurityEvent.Kind.SIGNED_OUT_EVERYWHERE, actor.id(), id, ClientAddress.of(request), null);
    after.addFlashAttribute("said", "people.signed-out");
    return "redirect:/admin/people/" + id;
  }

  @PostMapping("/admin/people/{id}/close")
  String close(
      Actor actor,
      @PathVariable long id,
      @RequestParam(defaultValue = "false") boolean sure,
      HttpServletRequest request,
      RedirectAttributes after) {
    if (!sure) {
      after.addFlashAttribute("said", "people.close.unsure");
      return "redirect:/admin/people/" + id;
    }
    membership.close(actor, account(id), ClientAddress.of(request));
    after.addFlashAttribute("said", "people.closed");
    return "redirect:/admin/people";
  }

  private Account account(long id) {
    return accounts.find(id).orElseThrow(() -> Refusal.notFound("unknown-person"));
  }
}
