package club.yearline.accounts;

import club.yearline.accounts.SecurityEvent.Kind;
import club.yearline.web.Phrases;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The way in and out. */
@Controller
class SignInController {

  static final String KEPT = "yearline.kept";

  private static final String CODE_PAGE = "accounts/code";
  private static final String PENDING = "yearline.pending";
  private static final String PENDING_SINCE = "yearline.pending-since";
  private static final String PENDING_TO = "yearline.pending-to";

  /** How long the code may take to type after the password. */
  private static final Duration PENDING_FOR = Duration.ofMinutes(10);

  private static final Set<String> NEWS = Set.of("keeper", "member", "password", "out");

  private final SignIn signIn;
  private final Sessions sessions;
  private final Accounts accounts;
  private final Doorstep doorstep;
  private final SecurityLog log;
  private final Phrases phrases;

  SignInController(
      SignIn signIn,
      Sessions sessions,
      Accounts accounts,
      Doorstep doorstep,
      SecurityLog log,
      Phrases phrases) {
    this.signIn = signIn;
    this.sessions = sessions;
    this.accounts = accounts;
    this.doorstep = doorstep;
    this.log = log;
    this.phrases = phrases;
  }

  /** What the sign-in form sends. */
  record Form(
      @Nullable String email,
      @Nullable String password,
      @Nullable String to,
      @Nullable String kept) {

    String typedEmail() {
      return email == null ? "" : email;
    }

    String typedPassword() {
      return password == null ? "" : password;
    }
  }

  @GetMapping("/sign-in")
  String form(
      @Nullable Actor actor,
      @RequestParam(required = false) @Nullable String to,
      @RequestParam(name = "new", required = false) @Nullable String news,
      Model model) {
    if (actor != null) {
      return "redirect:" + ReturnPath.orElse(to, "/account");
    }
    if (news != null && NEWS.contains(news)) {
      model.addAttribute("said", "sign-in.new-" + news);
    }
    return doorstep.page(to, model);
  }

  @PostMapping("/sign-in")
  String signIn(
      @ModelAttribute Form form,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    SignIn.Outcome outcome;
    try {
      outcome =
          signIn.with(
              form.typedEmail(),
              form.typedPassword(),
              Devices.secret(request),
              ClientAddress.of(request));
    } catch (Hashing.Busy e) {
      response.setStatus(HttpStatus.SERVICE_UNAVAILABLE.value());
      return again(form, phrases.of("refusal.busy.detail"), model);
    }
    if (!(outcome instanceof SignIn.Outcome.Right right)) {
      return again(form, doorstep.trouble(outcome, "sign-in.wrong", response), model);
    }
    Optional<KeptForm> kept = KeptForm.read(form.kept());
    String to = ReturnPath.orElse(form.to(), "/account");
    return right.account().hasSecondFactor()
        ? askForCode(right.account(), to, kept, request, response)
        : doorstep.in(right.account(), Kind.SIGNED_IN, to, kept, request, response);
  }

  @GetMapping("/sign-in/code")
  String codeForm(HttpServletRequest request) {
    return pending(request).isPresent() ? CODE_PAGE : "redirect:/sign-in";
  }

  @PostMapping("/sign-in/code")
  String code(
      @RequestParam(defaultValue = "") String code,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    Optional<Account> account = pending(request);
    if (account.isEmpty()) {
      return "redirect:/sign-in";
    }
    SignIn.Outcome outcome = signIn.withCode(account.get(), code, ClientAddress.of(request));
    if (outcome instanceof SignIn.Outcome.Right) {
      HttpSession session = request.getSession();
      String to = ReturnPath.orElse((String) session.getAttribute(PENDING_TO), "/account");
      Optional<KeptForm> kept = Optional.ofNullable((KeptForm) session.getAttribute(KEPT));
      return doorstep.in(account.get(), Kind.SIGNED_IN, to, kept, request, response);
    }
    model.addAttribute("trouble", doorstep.trouble(outcome, "sign-in.code-wrong", response));
    return CODE_PAGE;
  }

  @PostMapping("/sign-out")
  String signOut(Actor actor, HttpServletRequest request, HttpServletResponse response) {
    log.add(Kind.SIGNED_OUT, actor.id(), ClientAddress.of(request));
    sessions.end(request, response);
    return "redirect:/";
  }

  private String askForCode(
      Account account,
      String to,
      Optional<KeptForm> kept,
      HttpServletRequest request,
      HttpServletResponse response) {
    HttpSession session = sessions.renew(request, response);
    session.setMaxInactiveInterval((int) PENDING_FOR.toSeconds());
    session.setAttribute(PENDING, account.id());
    session.setAttribute(PENDING_SINCE, Instant.now());
    session.setAttribute(PENDING_TO, to);
    kept.ifPresent(form -> session.setAttribute(KEPT, form));
    return "redirect:/sign-in/code";
  }

  /** Who has typed the right password a moment ago and owes the code. */
  private Optional<Account> pending(HttpServletRequest request) {
    HttpSession session = request.getSession(false);
    return session != null
            && session.getAttribute(PENDING) instanceof Long id
            && session.getAttribute(PENDING_SINCE) instanceof Instant since
            && since.plus(PENDING_FOR).isAfter(Instant.now())
        ? accounts.find(id).filter(Account::hasSecondFactor)
        : Optional.empty();
  }

  private String again(Form form, String trouble, Model model) {
    model.addAttribute("email", form.typedEmail());
    return doorstep.again(new Doorstep.Errand(form.to(), form.kept()), trouble, model);
  }
}
