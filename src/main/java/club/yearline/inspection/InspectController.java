package club.yearline.inspection;

import club.yearline.accounts.Actor;
import club.yearline.catalog.Links;
import club.yearline.catalog.Reading;
import club.yearline.effectivity.Position;
import club.yearline.expected.Trouble;
import club.yearline.expected.VariantMenu;
import club.yearline.web.Phrases;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.util.UriUtils;

/** The page "does this one match its papers": the claim, the walk-around list, the findings. */
@Controller
class InspectController {

  private static final String PAGE = "inspection/inspect";

  private final Inspecting inspecting;
  private final SavedInspections saved;
  private final Phrases phrases;

  InspectController(Inspecting inspecting, SavedInspections saved, Phrases phrases) {
    this.inspecting = inspecting;
    this.saved = saved;
    this.phrases = phrases;
  }

  @GetMapping("/inspect")
  String inspect(
      @Nullable Actor actor,
      Reading reading,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    Inspecting.Outcome outcome = inspecting.of(reading, request);
    claimForm(outcome, model);
    saving(actor, outcome, model);
    if (outcome.made() == null) {
      Trouble trouble = outcome.trouble();
      model.addAttribute("title", phrases.of("inspect.title"));
      model.addAttribute("trouble", trouble);
      response.setStatus(trouble == null ? HttpStatus.OK.value() : trouble.status());
      return PAGE;
    }
    if (outcome.sent().isFaulty()) {
      response.setStatus(HttpStatus.BAD_REQUEST.value());
    }
    answer(outcome, outcome.made(), model);
    model.addAttribute("title", phrases.of("inspect.of", outcome.made().report().heading()));
    model.addAttribute(
        "stamps", inspecting.plate(outcome.addresses()).stamps(outcome.made().found()));
    return PAGE;
  }

  /** What changes as one goes. */
  @GetMapping("/inspect/findings")
  String findings(
      Reading reading, HttpServletRequest request, HttpServletResponse response, Model model) {
    Inspecting.Outcome outcome = inspecting.of(reading, request);
    if (outcome.made() == null) {
      return "redirect:" + outcome.addresses().links().reading().link("/inspect");
    }
    answer(outcome, outcome.made(), model);
    model.addAttribute("live", true);
    response.setHeader(
        "HX-Replace-Url", outcome.addresses().page(outcome.made().inspection().claim()));
    return "inspection/parts :: live";
  }

  /** A form that was sent to be checked becomes the address that answers it. */
  @PostMapping("/inspect/check")
  String check(Reading reading, HttpServletRequest request) {
    Inspecting.Outcome outcome = inspecting.of(reading, request);
    Links bare = new Links(reading, "");
    Addresses addresses = new Addresses(bare, outcome.sent().seen());
    if (outcome.made() != null) {
      return "redirect:" + addresses.page(outcome.made().inspection().claim());
    }
    return "redirect:"
        + addresses.to(outcome.sent().asked().variant(), null, outcome.sent().asked().serial());
  }

  private void claimForm(Inspecting.Outcome outcome, Model model) {
    Links links = outcome.addresses().links();
    model.addAttribute("rev", links.reading().asked());
    model.addAttribute("asked", outcome.sent().asked());
    model.addAttribute("menu", VariantMenu.of(links.reading().catalogue(), null));
    model.addAttribute("action", links.root() + "/inspect");
    model.addAttribute("leftOut", outcome.sent().leftOut());
    model.addAttribute("seen", outcome.sent().seen());
  }

  private void answer(Inspecting.Outcome outcome, Inspecting.Made made, Model model) {
    Addresses addresses = outcome.addresses();
    Position claim = made.inspection().claim();
    model.addAttribute("report", made.report());
    model.addAttribute("walk", inspecting.walk(outcome, made));
    model.addAttribute("claim", claim);
    model.addAttribute("findingsHref", addresses.links().root() + "/inspect/findings");
    model.addAttribute("checkHref", addresses.links().root() + "/inspect/check");
    model.addAttribute("pageHref", addresses.page(claim));
    model.addAttribute("freshHref", new Addresses(addresses.links(), List.of()).page(claim));
    model.addAttribute("expectedHref", addresses.links().expected(claim));
    model.addAttribute("reportHref", addresses.of("report", claim));
    model.addAttribute("pdfHref", addresses.of("report.pdf", claim));
    model.addAttribute("letterHref", addresses.of("report.pdf", claim) + "&paper=letter");
  }

  /** A member saves by the page's own number, so that a form sent twice is saved once. */
  private void saving(@Nullable Actor actor, Inspecting.Outcome outcome, Model model) {
    String root = outcome.addresses().links().root();
    Inspecting.Made made = outcome.made();
    String page = made == null ? "/inspect" : outcome.addresses().page(made.inspection().claim());
    model.addAttribute("member", actor != null);
    model.addAttribute("saveHref", root + "/inspect/saved/" + UUID.randomUUID());
    model.addAttribute(
        "signInHref", root + "/sign-in?to=" + UriUtils.encode(page, StandardCharsets.UTF_8));
    if (actor != null && made == null) {
      model.addAttribute("mine", saved.of(actor).stream().map(s -> mine(root, s)).toList());
    }
  }

  /** A saved inspection in a list. */
  public record Mine(String text, String href) {}

  private Mine mine(String root, SavedInspection known) {
    String what = known.serial() == null ? known.variant() + " " + known.year() : known.serial();
    return new Mine(
        phrases.of("inspect.mine.line", what, known.on()), root + "/inspect/saved/" + known.id());
  }
}
