package club.yearline.accounts;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** A person's own account. */
@Controller
class AccountController {

  @GetMapping("/account")
  String account(Actor actor, Model model) {
    model.addAttribute("actor", actor);
    return "accounts/account";
  }
}
