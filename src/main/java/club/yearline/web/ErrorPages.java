package club.yearline.web;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.HttpRequestMethodNotSupportedException;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;

/**
 * Answers errors that arise outside the controllers (a filter's refusal, a malformed request), and
 * explains kinds of problems at the addresses that the API names as their type.
 */
@Controller
class ErrorPages implements ErrorController {

  /** Where the security filters say what else the address answers to. */
  private static final String WRONG_METHOD = HttpRequestMethodNotSupportedException.class.getName();

  private final Problems problems;

  ErrorPages(MessageSource messages) {
    this.problems = new Problems(messages);
  }

  @RequestMapping("${server.error.path:/error}")
  Object error(HttpServletRequest request, HttpServletResponse response) {
    Object status = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE);
    Object uri = request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI);
    // Asked for directly, this address is no page.
    Refusal refusal =
        request.getAttribute(WRONG_METHOD) instanceof HttpRequestMethodNotSupportedException wrong
            ? Refusals.of(wrong)
            : Refusals.of(status instanceof Integer code ? code : 404);
    response.setStatus(refusal.status().value());
    String path = uri instanceof String text ? text : request.getRequestURI();
    return problems.answer(path.substring(request.getContextPath().length()), refusal);
  }

  @GetMapping(Problem.PATH + "{code}")
  String kind(@PathVariable String code, Model model) {
    model.addAttribute(
        "problem", problems.kind(code).orElseThrow(() -> Refusal.notFound("not-found")));
    return "problem";
  }
}
