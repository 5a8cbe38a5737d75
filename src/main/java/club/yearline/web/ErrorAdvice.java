package club.yearline.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.web.ErrorResponse;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.servlet.ModelAndView;

/** Answers whatever goes wrong in a controller: a page, or a problem under {@code /api}. */
@ControllerAdvice
class ErrorAdvice {

  private static final Logger log = LoggerFactory.getLogger(ErrorAdvice.class);

  private final Problems problems;

  ErrorAdvice(MessageSource messages) {
    this.problems = new Problems(messages);
  }

  @ExceptionHandler
  Object answer(Exception e, HttpServletRequest request, HttpServletResponse response)
      throws Exception {
    // The security filters turn these two into a sign-in or a refusal; a sent answer stays as it
    // is.
    if (e instanceof AccessDeniedException
        || e instanceof AuthenticationException
        || response.isCommitted()) {
      throw e;
    }
    Refusal refusal = Refusals.of(e);
    // Being too busy is no fault, and a flood must not fill the log as well.
    if (refusal.status().is5xxServerError() && refusal.status() != HttpStatus.SERVICE_UNAVAILABLE) {
      log.error("Could not answer {} {}", request.getMethod(), Problems.path(request), e);
    }
    response.setStatus(refusal.status().value());
    HttpHeaders headers = e instanceof ErrorResponse known ? known.getHeaders() : HttpHeaders.EMPTY;
    headers.forEach((name, values) -> values.forEach(v -> response.addHeader(name, v)));
    Object answer = problems.answer(Problems.path(request), refusal);
    if (answer instanceof ModelAndView page) {
      page.addObject("sentFrom", SentFrom.of(request));
    }
    return answer;
  }
}
