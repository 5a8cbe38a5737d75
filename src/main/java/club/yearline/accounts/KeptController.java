package club.yearline.accounts;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.SessionAttribute;

/** Saves what somebody had typed when the session was lost. Sends nothing by itself. */
@Controller
class KeptController {

  private static final String KEPT = "club.yearline.accounts.KeptForm";

  private final Doorstep doorstep;

  KeptController(Doorstep doorstep) {
    this.doorstep = doorstep;
  }

  /** The form came without a session: it waits on the sign-in page. */
  @PostMapping("/sign-in/first")
  String first(
      @RequestAttribute(name = KEPT, required = false) @Nullable KeptForm kept,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    if (kept == null) {
      return "redirect:/sign-in";
    }
    response.setStatus(HttpStatus.UNAUTHORIZED.value());
    model.addAttribute("kept", kept.written());
    model.addAttribute("lostFiles", KeptForm.hadFiles(request));
    return doorstep.page(null, model);
  }

  /** The form came from a page of another session of the same person. */
  @PostMapping("/sign-in/again")
  String again(
      @RequestAttribute(name = KEPT, required = false) @Nullable KeptForm kept,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    if (kept == null) {
      return "redirect:/sign-in";
    }
    response.setStatus(HttpStatus.FORBIDDEN.value());
    model.addAttribute("kept", kept);
    model.addAttribute("lostFiles", KeptForm.hadFiles(request));
    return "accounts/resume";
  }

  /** After sign-in: the form, to be sent or dropped. */
  @GetMapping("/sign-in/resume")
  String resume(
      Actor actor,
      @SessionAttribute(name = SignInController.KEPT, required = false) @Nullable KeptForm kept,
      Model model) {
    if (kept == null) {
      return "redirect:/account";
    }
    model.addAttribute("kept", kept);
    return "accounts/resume";
  }
}
