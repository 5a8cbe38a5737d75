package club.yearline.web;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.servlet.ModelAndView;

/** Puts refusals into words, and the words into the answer: a page, or a problem of the API. */
final class Problems {

  private static final String API = "/api/";

  private final MessageSource messages;

  Problems(MessageSource messages) {
    this.messages = messages;
  }

  /** The answer to a request for the given path of ours. */
  Object answer(String path, Refusal refusal) {
    Problem problem = inWords(refusal);
    return path.startsWith(API) ? json(problem) : page(problem);
  }

  /** A kind of problem in words; empty if there is no such kind. */
  Optional<Problem> kind(String code) {
    Locale locale = LocaleContextHolder.getLocale();
    String key = "refusal." + code;
    String advice = messages.getMessage(key + ".advice", null, "", locale);
    String title = messages.getMessage(key, null, "", locale);
    return title == null || title.isEmpty() || advice == null
        ? Optional.empty()
        : Optional.of(new Problem(0, code, title, "", advice, List.of(), Map.of()));
  }

  /** The path of a request within the application. */
  static String path(HttpServletRequest request) {
    return request.getRequestURI().substring(request.getContextPath().length());
  }

  private Problem inWords(Refusal refusal) {
    String key = "refusal." + refusal.code();
    Object[] arguments = refusal.arguments().toArray();
    return new Problem(
        refusal.status().value(),
        refusal.code(),
        text(key),
        text(key + ".detail", arguments),
        text(key + ".advice", arguments),
        refusal.faults().stream().map(this::inWords).toList(),
        refusal.members());
  }

  private Problem.FieldFault inWords(Refusal.Fault fault) {
    return new Problem.FieldFault(fault.field(), text(fault.key(), fault.arguments().toArray()));
  }

  private String text(String key, Object... arguments) {
    return messages.getMessage(key, arguments, LocaleContextHolder.getLocale());
  }

  private static ModelAndView page(Problem problem) {
    ModelAndView page = new ModelAndView("error");
    page.addObject("problem", problem);
    return page;
  }

  private static ResponseEntity<ProblemDetail> json(Problem problem) {
    ProblemDetail body =
        ProblemDetail.forStatusAndDetail(
            HttpStatusCode.valueOf(problem.status()), problem.detail());
    body.setType(URI.create(problem.type()));
    body.setTitle(problem.title());
    if (!problem.faults().isEmpty()) {
      body.setProperty("errors", problem.faults());
    }
    problem.members().forEach(body::setProperty);
    return ResponseEntity.status(problem.status())
        .contentType(MediaType.APPLICATION_PROBLEM_JSON)
        .body(body);
  }
}
