package club.yearline.accounts;

import club.yearline.accounts.Membership.Entrant;
import club.yearline.accounts.OneTimeLink.Kind;
import club.yearline.web.Phrases;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/** How an account comes about: by the server's link for a keeper, or by an invitation. */
@Controller
class EntryController {

  private static final String PAGE = "accounts/entry";

  private final Links links;
  private final Membership membership;
  private final Hashing hashing;
  private final Phrases phrases;
  private final Post post;

  EntryController(Links links, Membership membership, Hashing hashing, Phrases phrases, Post post) {
    this.links = links;
    this.membership = membership;
    this.hashing = hashing;
    this.phrases = phrases;
    this.post = post;
  }

  @GetMapping("/set-up/{secret}")
  String setUpForm(@PathVariable String secret, Model model) {
    links.usable(secret, Kind.SET_UP);
    return form("set-up", new Entry("", "", ""), model);
  }

  @PostMapping("/set-up/{secret}")
  String setUp(
      @PathVariable String secret,
      @ModelAttribute Entry entry,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    OneTimeLink link = links.usable(secret, Kind.SET_UP);
    Optional<Entrant> entrant = entrant(entry, response, model);
    if (entrant.isEmpty()) {
      return form("set-up", entry, model);
    }
    membership.setUpKeeper(link, entrant.get(), ClientAddress.of(request));
    return "redirect:/sign-in?new=keeper";
  }

  @GetMapping("/join/{secret}")
  String joinForm(@PathVariable String secret, Model model) {
    OneTimeLink link = links.usable(secret, Kind.INVITATION);
    return form("join", new Entry("", link.email(), ""), model);
  }

  @PostMapping("/join/{secret}")
  String join(
      @PathVariable String secret,
      @ModelAttribute Entry entry,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    OneTimeLink link = links.usable(secret, Kind.INVITATION);
    Optional<Entrant> entrant = entrant(entry, response, model);
    if (entrant.isEmpty()) {
      return form("join", entry, model);
    }
    membership.join(link, entrant.get(), ClientAddress.of(request));
    return "redirect:/sign-in?new=member";
  }

  private Optional<Entrant> entrant(Entry entry, HttpServletResponse response, Model model) {
    Faults faults = new Faults(phrases);
    entry.check(faults, post.clubName());
    Optional<EmailAddress> email = entry.address();
    if (email.isEmpty() || !faults.isEmpty()) {
      model.addAttribute("faults", faults.byField());
      response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
      return Optional.empty();
    }
    return Optional.of(
        new Entrant(entry.typedName(), email.get(), hashing.hash(entry.typedPassword())));
  }

  private static String form(String kind, Entry entry, Model model) {
    model.addAttribute("kind", kind);
    model.addAttribute("name", entry.typedName());
    model.addAttribute("email", entry.typedEmail());
    return PAGE;
  }
}
