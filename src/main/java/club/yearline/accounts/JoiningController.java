package club.yearline.accounts;

import club.yearline.accounts.OneTimeLink.Kind;
import club.yearline.web.Phrases;
import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Who may join: invitations, and requests to decide on. For moderators. */
@Controller
class JoiningController {

  private static final String PAGE = "accounts/joining";
  private static final String HERE = "redirect:/admin/joining";
  private static final int INVITATIONS_AN_HOUR = 30;

  private final Links links;
  private final JoinRequests requests;
  private final People people;
  private final Addresses addresses;
  private final Post post;
  private final SecurityLog log;
  private final Phrases phrases;
  private final Throttle throttle;

  JoiningController(
      Links links,
      JoinRequests requests,
      People people,
      Addresses addresses,
      Post post,
      SecurityLog log,
      Phrases phrases,
      Throttle throttle) {
    this.links = links;
    this.requests = requests;
    this.people = people;
    this.addresses = addresses;
    this.post = post;
    this.log = log;
    this.phrases = phrases;
    this.throttle = throttle;
  }

  @GetMapping("/admin/joining")
  String page(Model model) {
    var open = links.open(Kind.INVITATION);
    model.addAttribute("invitations", open);
    model.addAttribute("names", people.namesOf(open.stream().map(OneTimeLink::madeBy).toList()));
    model.addAttribute("requests", requests.open());
    return PAGE;
  }

  /** The link is shown in this answer and nowhere else. */
  @PostMapping("/admin/joining/invite")
  String invite(
      Actor actor,
      @RequestParam(defaultValue = "") String email,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    EmailAddress address = EmailAddress.of(email).orElse(null);
    if (address == null && !email.isBlank()) {
      response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
      model.addAttribute("faults", new Faults(phrases).at("email", "person.email.wrong").byField());
      model.addAttribute("email", email);
    } else {
      invite(actor, address, request, model);
    }
    return page(model);
  }

  @PostMapping("/admin/joining/invitations/{id}/revoke")
  String revoke(Actor actor, @PathVariable long id, HttpServletRequest request) {
    if (links.revoke(id, Kind.INVITATION)) {
      log.add(SecurityEvent.Kind.INVITATION_REVOKED, actor.id(), ClientAddress.of(request));
    }
    return HERE;
  }

  @PostMapping("/admin/joining/requests/{id}/accept")
  String accept(Actor actor, @PathVariable long id, HttpServletRequest request, Model model) {
    var asked = requests.open(id).orElseThrow(() -> Refusal.notFound("not-found"));
    EmailAddress address =
        EmailAddress.of(asked.email()).orElseThrow(() -> Refusal.notFound("not-found"));
    if (requests.decide(id, true, actor.id())) {
      log.add(SecurityEvent.Kind.JOIN_ACCEPTED, actor.id(), ClientAddress.of(request));
      invite(actor, address, request, model);
    }
    return page(model);
  }

  @PostMapping("/admin/joining/requests/{id}/decline")
  String decline(Actor actor, @PathVariable long id, HttpServletRequest request) {
    if (requests.decide(id, false, actor.id())) {
      log.add(SecurityEvent.Kind.JOIN_DECLINED, actor.id(), ClientAddress.of(request));
    }
    return HERE;
  }

  private void invite(
      Actor actor, @Nullable EmailAddress address, HttpServletRequest request, Model model) {
    throttle.require("invite", actor.id(), INVITATIONS_AN_HOUR);
    String path =
        links.make(Kind.INVITATION, null, address == null ? null : address.text(), actor.id());
    log.add(SecurityEvent.Kind.INVITED, actor.id(), ClientAddress.of(request));
    model.addAttribute("link", addresses.here(request, path));
    if (address != null && post.isSet()) {
      post.later(() -> post.send(address, "mail.invitation", addresses.publicly(path)));
      model.addAttribute("mailed", address.text());
    }
  }
}
