package club.yearline.exchange;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Throttle;
import club.yearline.corrections.PackageProposal;
import club.yearline.corrections.Proposing;
import club.yearline.uploads.NotTaken;
import club.yearline.web.Phrases;
import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

/**
 * Data packages brought by people. A package without errors becomes a correction, which shows what
 * it would change before anything is published: a member's waits for a moderator, a keeper can
 * publish an own one.
 */
@Controller
class PackagePages {

  private static final String PROPOSE = "/corrections/package";
  private static final String IMPORT = "/import";
  private static final int LONGEST_TITLE = 200;
  private static final int LONGEST_NAME = 80;
  private static final int AN_HOUR = 60;

  private final UploadedPackages packages;
  private final Proposing proposing;
  private final Throttle throttle;
  private final Phrases phrases;

  PackagePages(UploadedPackages packages, Proposing proposing, Throttle throttle, Phrases phrases) {
    this.throttle = throttle;
    this.packages = packages;
    this.proposing = proposing;
    this.phrases = phrases;
  }

  /**
   * What was sent.
   *
   * @param file the package
   * @param name what it is called
   * @param title what the correction shall be called
   * @param token of the form
   */
  private record Sent(MultipartFile file, String name, String title, String token) {}

  private interface Beginning {
    long of(PackageProposal proposal);
  }

  @GetMapping(PROPOSE)
  String propose(Model model) {
    return form(PROPOSE, "", model);
  }

  @GetMapping(IMPORT)
  String bring(Model model) {
    return form(IMPORT, "", model);
  }

  @PostMapping(PROPOSE)
  String propose(
      @RequestParam(required = false) @Nullable MultipartFile file,
      @RequestParam(defaultValue = "") String title,
      @RequestParam(defaultValue = "") String token,
      Actor actor,
      HttpServletResponse response,
      Model model)
      throws IOException {
    Sent sent = sent(actor, file, title, token);
    return receive(
        sent,
        p -> proposing.ofPackage(actor, sent.title(), p, sent.token()),
        PROPOSE,
        response,
        model);
  }

  @PostMapping(IMPORT)
  String bring(
      @RequestParam(required = false) @Nullable MultipartFile file,
      @RequestParam(defaultValue = "") String title,
      @RequestParam(defaultValue = "") String token,
      Actor actor,
      HttpServletResponse response,
      Model model)
      throws IOException {
    Sent sent = sent(actor, file, title, token);
    return receive(
        sent,
        p -> proposing.ofPackageHandedIn(actor, sent.title(), p, sent.token()),
        IMPORT,
        response,
        model);
  }

  private String receive(
      Sent sent, Beginning beginning, String action, HttpServletResponse response, Model model)
      throws IOException {
    try {
      return packages.read(
          sent.file(),
          sent.name(),
          reading -> {
            String page = answer(sent, reading, beginning, action, model);
            if (!page.startsWith("redirect:")) {
              response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            }
            return page;
          });
    } catch (NotTaken busy) {
      throw Refusal.of(HttpStatus.SERVICE_UNAVAILABLE, "packages-busy");
    }
  }

  private String answer(
      Sent sent, PackageReading reading, Beginning beginning, String action, Model model) {
    if (reading.isRefused()) {
      model.addAttribute("report", ReportView.of(sent.name(), reading));
      return form(action, sent.title(), model);
    }
    PackageProposal proposal = packages.proposal(reading);
    if (proposal.entries().isEmpty() && proposal.pictures().isEmpty()) {
      model.addAttribute("notice", phrases.of("package.unchanged", sent.name()));
      return form(action, sent.title(), model);
    }
    return "redirect:/corrections/" + beginning.of(proposal);
  }

  private Sent sent(Actor actor, @Nullable MultipartFile file, String title, String token) {
    throttle.require("package", actor.id(), AN_HOUR);
    if (file == null || file.isEmpty()) {
      throw Refusal.unprocessable("package-missing");
    }
    String full = Objects.requireNonNullElse(file.getOriginalFilename(), "");
    String last = full.substring(Math.max(full.lastIndexOf('/'), full.lastIndexOf('\\')) + 1);
    String name = shortened(last.replaceAll("\\p{C}", ""), LONGEST_NAME);
    String called = title.isBlank() ? phrases.of("package.title", name) : title.strip();
    return new Sent(file, name, shortened(called, LONGEST_TITLE), token);
  }

  private static String shortened(String text, int most) {
    return text.codePointCount(0, text.length()) <= most
        ? text
        : text.substring(0, text.offsetByCodePoints(0, most));
  }

  private static String form(String action, String title, Model model) {
    model.addAttribute("action", action);
    model.addAttribute("title", title);
    model.addAttribute("token", UUID.randomUUID());
    return "exchange/bring";
  }
}
