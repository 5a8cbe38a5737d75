package club.yearline.accounts;

import club.yearline.web.Phrases;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The way in and out. */
@Controller
class SignInController {

  static final String KEPT = "yearline.kept";

  private static final String PAGE = "accounts/sign-in";

  private final SignIn signIn;
  private final Sessions sessions;
  private final Phrases phrases;

  SignInController(SignIn signIn, Sessions sessions, Phrases phrases) {
    this.signIn = signIn;
    this.sessions = sessions;
    this.phrases = phrases;
  }

  @GetMapping("/sign-in")
  String form(
      @Nullable Actor actor, @RequestParam(required = false) @Nullable String to, Model model) {
    String back = ReturnPath.orElse(to, "/account");
    if (actor != null) {
      return "redirect:" + back;
    }
    model.addAttribute("to", ReturnPath.orElse(to, ""));
    return PAGE;
  }

  @PostMapping("/sign-in")
  String signIn(
      @RequestParam(defaultValue = "") String email,
      @RequestParam(defaultValue = "") String password,
      @RequestParam(required = false) @Nullable String to,
      @RequestParam(required = false) @Nullable String kept,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    Optional<Account> account = signIn.with(email, password);
    Optional<KeptForm> form = KeptForm.read(kept);
    if (account.isEmpty()) {
      response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
      model.addAttribute("trouble", phrases.of("sign-in.wrong"));
      model.addAttribute("email", email);
      model.addAttribute("to", ReturnPath.orElse(to, ""));
      form.ifPresent(f -> model.addAttribute("kept", f.written()));
      return PAGE;
    }
    HttpSession session = sessions.begin(account.get().id(), request, response);
    if (form.isPresent()) {
      session.setAttribute(KEPT, form.get());
      return "redirect:/sign-in/resume";
    }
    return "redirect:" + ReturnPath.orElse(to, "/account");
  }

  @PostMapping("/sign-out")
  String signOut(HttpServletRequest request, HttpServletResponse response) {
    sessions.end(request, response);
    return "redirect:/";
  }
}
