package club.yearline.accounts;

import club.yearline.accounts.OneTimeLink.Kind;
import club.yearline.web.Phrases;
import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** A forgotten password: a link by mail where there is mail, else one from a keeper. */
@Controller
class ResetController {

  private static final String ASK = "accounts/ask-reset";
  private static final String SET = "accounts/reset";
  private static final int AN_HOUR = 5;

  private final Accounts accounts;
  private final Links links;
  private final Membership membership;
  private final Hashing hashing;
  private final Post post;
  private final Addresses addresses;
  private final Throttle throttle;
  private final SecurityLog log;
  private final Phrases phrases;

  ResetController(
      Accounts accounts,
      Links links,
      Membership membership,
      Hashing hashing,
      Post post,
      Addresses addresses,
      Throttle throttle,
      SecurityLog log,
      Phrases phrases) {
    this.accounts = accounts;
    this.links = links;
    this.membership = membership;
    this.hashing = hashing;
    this.post = post;
    this.addresses = addresses;
    this.throttle = throttle;
    this.log = log;
    this.phrases = phrases;
  }

  @GetMapping("/reset")
  String askForm(@RequestParam(defaultValue = "false") boolean asked, Model model) {
    model.addAttribute("mail", post.isSet());
    model.addAttribute("asked", asked);
    return ASK;
  }

  /** Whatever is typed, the answer is the same, and as quick. */
  @PostMapping("/reset")
  String ask(@RequestParam(defaultValue = "") String email, HttpServletRequest request) {
    ClientAddress from = ClientAddress.of(request);
    throttle.require("reset", from.network(), AN_HOUR);
    Optional<EmailAddress> address = EmailAddress.of(email);
    if (address.isPresent()
        && post.isSet()
        && throttle.allows("reset-of", address.get().key(), AN_HOUR, Duration.ofHours(1))) {
      post.later(() -> mail(address.get(), from));
    }
    return "redirect:/reset?asked=true";
  }

  @GetMapping("/reset/{secret}")
  String form(@PathVariable String secret, Model model) {
    model.addAttribute("shortest", shortest(usable(secret)));
    return SET;
  }

  @PostMapping("/reset/{secret}")
  String reset(
      @PathVariable String secret,
      @RequestParam(defaultValue = "") String password,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    Found found = usable(secret);
    Account account = found.account();
    int shortest = shortest(found);
    List<String> names = List.of(account.name(), account.email(), post.clubName());
    Optional<String> fault = PasswordRules.fault(password, shortest, names);
    if (fault.isPresent()) {
      response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
      model.addAttribute("faults", new Faults(phrases).at("password", fault.get()).byField());
      model.addAttribute("shortest", shortest);
      return SET;
    }
    membership.reset(found.link(), account, hashing.hash(password), ClientAddress.of(request));
    post.tell(account, "mail.password-changed");
    return "redirect:/sign-in?new=password";
  }

  private record Found(OneTimeLink link, Account account) {}

  private Found usable(String secret) {
    OneTimeLink link = links.usable(secret, Kind.RESET, Kind.MAILED_RESET);
    return Optional.ofNullable(link.person())
        .flatMap(accounts::find)
        .map(account -> new Found(link, account))
        .orElseThrow(() -> Refusal.of(HttpStatus.GONE, "link-spent"));
  }

  private static int shortest(Found found) {
    boolean stays = found.account().hasSecondFactor() && !found.link().withoutSecondFactor();
    return stays ? PasswordRules.BESIDE : PasswordRules.ALONE;
  }

  private void mail(EmailAddress address, ClientAddress from) {
    Optional<Account> account = accounts.withEmail(address);
    log.add(
        SecurityEvent.Kind.RESET_ASKED, null, account.map(Account::id).orElse(null), from, null);
    if (account.isPresent()) {
      String path = links.make(Kind.MAILED_RESET, account.get().id(), null, null);
      post.send(address, "mail.reset", addresses.publicly(path));
    }
  }
}
