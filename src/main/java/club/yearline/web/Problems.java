package club.yearline.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.context.support.DefaultMessageSourceResolvable;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.servlet.ModelAndView;

/** Puts refusals into words, and the words into the answer: a page, or a problem of the API. */
final class Problems {

  private static final String API = "/api/";

  /** Ends the key of a text that says otherwise to a program what pages say to people. */
  private static final String FOR_PROGRAMS = ".api";

  private final MessageSource messages;

  Problems(MessageSource messages) {
    this.messages = messages;
  }

  /** The answer to a request for the given path of ours. */
  Object answer(String path, Refusal refusal) {
    return path.startsWith(API)
        ? json(inWords(refusal, List.of(FOR_PROGRAMS, "")))
        : page(inWords(refusal, List.of("")));
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

  /** A refusal in words; of each text the first that there is in one of the given forms. */
  private Problem inWords(Refusal refusal, List<String> forms) {
    String key = "refusal." + refusal.code();
    return new Problem(
        refusal.status().value(),
        refusal.code(),
        text(key),
        text(key + ".detail", refusal, forms),
        text(key + ".advice", refusal, forms),
        refusal.faults().stream().map(this::inWords).toList(),
        refusal.members());
  }

  private Problem.FieldFault inWords(Refusal.Fault fault) {
    return new Problem.FieldFault(fault.field(), text(fault.key(), fault.arguments().toArray()));
  }

  private String text(String key, Refusal refusal, List<String> forms) {
    String[] keys = forms.stream().map(form -> key + form).toArray(String[]::new);
    return messages.getMessage(
        new DefaultMessageSourceResolvable(keys, refusal.arguments().toArray()),
        LocaleContextHolder.getLocale());
  }

  private String text(String key, Object... arguments) {
    return messages.getMessage(key, arguments, LocaleContextHolder.getLocale());
  }

  private static ModelAndView page(Problem problem) {
    ModelAndView page = new ModelAndView("error");
    page.addObject("problem", problem);
    return page;
  }

  private static ResponseEntity<Map<String, Object>> json(Problem problem) {
    Map<String, Object> body = new LinkedHashMap<>();
    body.put("type", problem.type());
    body.put("title", problem.title());
    body.put("status", problem.status());
    body.put("detail", problem.detail());
    body.put("advice", problem.advice());
    if (!problem.faults().isEmpty()) {
      body.put("errors", problem.faults());
    }
    body.putAll(problem.members());
    return ResponseEntity.status(problem.status())
        .contentType(MediaType.APPLICATION_PROBLEM_JSON)
        .body(body);
  }
}
