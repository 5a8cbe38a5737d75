package club.yearline.catalog;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.core.MethodParameter;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.converter.HttpMessageConverter;
import org.springframework.http.server.ServerHttpRequest;
import org.springframework.http.server.ServerHttpResponse;
import org.springframework.http.server.ServletServerHttpRequest;
import org.springframework.http.server.ServletServerHttpResponse;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.context.request.ServletWebRequest;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.method.annotation.ResponseBodyAdvice;

/**
 * Says how long an answer read from the catalogue stays fresh: for ever at a revision that the
 * address names, until the next publication otherwise. Refusals carry neither.
 *
 * <p>What is read at a fixed revision has a strong tag, for caches and proxies. What is newest has
 * a weak one, because the container compresses no answer with a strong tag, and a telephone in a
 * hangar gains more from the compression.
 */
@ControllerAdvice
class Freshness implements HandlerInterceptor, ResponseBodyAdvice<Object> {

  private static final String FIXED =
      Objects.requireNonNull(
          CacheControl.maxAge(Duration.ofDays(365)).cachePublic().immutable().getHeaderValue());
  private static final String UNTIL_NEXT =
      Objects.requireNonNull(CacheControl.noCache().getHeaderValue());

  /** A page names people, or who is signed in, and forms that are good for that session only. */
  private static final String OWN =
      Objects.requireNonNull(CacheControl.noCache().cachePrivate().getHeaderValue());

  /** An answer to a question in a body is no answer to the address alone. */
  private static final String NEVER =
      Objects.requireNonNull(CacheControl.noStore().getHeaderValue());

  private static final Set<String> KEPT = Set.of("GET", "HEAD");

  /** Another version of the application may write the same answer in other bytes. */
  private final String version =
      Objects.requireNonNullElseGet(
          Freshness.class.getPackage().getImplementationVersion(),
          () -> Long.toString(System.currentTimeMillis(), Character.MAX_RADIX));

  /** Remembers what a request reads, for the answer's headers. */
  static void note(HttpServletRequest request, Reading reading) {
    request.setAttribute(Reading.class.getName(), reading);
  }

  @Override
  public void postHandle(
      HttpServletRequest request,
      HttpServletResponse response,
      Object handler,
      @Nullable ModelAndView page) {
    if (page == null || page.getStatus() != null) {
      return;
    }
    if (namesPeople(handler)) {
      response.setHeader(HttpHeaders.CACHE_CONTROL, OWN);
    } else if (unchanged(request, response)) {
      page.clear();
    }
  }

  private static boolean namesPeople(Object handler) {
    return handler instanceof HandlerMethod method
        && method.getBeanType().isAnnotationPresent(NamesPeople.class);
  }

  @Override
  public boolean supports(
      MethodParameter returnType, Class<? extends HttpMessageConverter<?>> converter) {
    return true;
  }

  @Override
  public @Nullable Object beforeBodyWrite(
      @Nullable Object body,
      MethodParameter returnType,
      MediaType type,
      Class<? extends HttpMessageConverter<?>> converter,
      ServerHttpRequest request,
      ServerHttpResponse response) {
    return request instanceof ServletServerHttpRequest in
            && response instanceof ServletServerHttpResponse out
            && unchanged(in.getServletRequest(), out.getServletResponse())
        ? null
        : body;
  }

  /** Sets the headers of an answer and tells whether the asker already has it. */
  private boolean unchanged(HttpServletRequest request, HttpServletResponse response) {
    if (!(request.getAttribute(Reading.class.getName()) instanceof Reading reading)
        || response.getStatus() != HttpServletResponse.SC_OK) {
      return false;
    }
    if (request.getUserPrincipal() != null) {
      response.setHeader(HttpHeaders.CACHE_CONTROL, OWN);
      return false;
    }
    if (!KEPT.contains(request.getMethod())) {
      response.setHeader(HttpHeaders.CACHE_CONTROL, NEVER);
      return false;
    }
    response.setHeader(HttpHeaders.CACHE_CONTROL, reading.fixed() ? FIXED : UNTIL_NEXT);
    String tag = "\"" + reading.revision() + "-" + version + "\"";
    return new ServletWebRequest(request, response)
        .checkNotModified(reading.fixed() ? tag : "W/" + tag);
  }
}
