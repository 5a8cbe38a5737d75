package club.yearline.accounts;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Set;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.csrf.CsrfException;
import org.springframework.web.util.UriComponentsBuilder;

/**
 * Answers whoever is not let through. Somebody who mistypes an address hears that there is no such
 * page; a reader of a page for members is sent to sign-in and back; who has typed something keeps
 * it.
 */
final class TurnAway implements AuthenticationEntryPoint, AccessDeniedHandler {

  private static final Set<String> READ = Set.of("GET", "HEAD");

  private final Signposts signposts;

  TurnAway(Signposts signposts) {
    this.signposts = signposts;
  }

  /** Nobody has signed in. */
  @Override
  public void commence(
      HttpServletRequest request, HttpServletResponse response, AuthenticationException e)
      throws IOException, ServletException {
    if (!signposts.leadsSomewhere(request, response)) {
      return;
    }
    if (isUnlisted(request)) {
      response.sendError(HttpServletResponse.SC_NOT_FOUND);
    } else if (isForPrograms(request)) {
      response.sendError(HttpServletResponse.SC_UNAUTHORIZED);
    } else if (READ.contains(request.getMethod())) {
      response.sendRedirect(signInFor(request));
    } else {
      keepOrRefuse(request, response, "/sign-in/first");
    }
  }

  /** Somebody has signed in, or the form came from elsewhere. */
  @Override
  public void handle(
      HttpServletRequest request, HttpServletResponse response, AccessDeniedException e)
      throws IOException, ServletException {
    if (!signposts.leadsSomewhere(request, response)) {
      return;
    }
    if (e instanceof CsrfException) {
      boolean signedIn = SignedInActor.current() != null;
      keepOrRefuse(request, response, signedIn ? "/sign-in/again" : "/sign-in/first");
    } else {
      response.sendError(
          isUnlisted(request)
              ? HttpServletResponse.SC_NOT_FOUND
              : HttpServletResponse.SC_FORBIDDEN);
    }
  }

  /** A form of our own keeps what was typed; whatever another site sends is refused. */
  private static void keepOrRefuse(
      HttpServletRequest request, HttpServletResponse response, String page)
      throws IOException, ServletException {
    if (isUnlisted(request) || !Origins.isOurs(request) || !KeptForm.canKeep(request)) {
      response.sendError(HttpServletResponse.SC_FORBIDDEN);
    } else {
      request.setAttribute(KeptForm.class.getName(), KeptForm.of(request));
      request.getRequestDispatcher(page).forward(request, response);
    }
  }

  private static boolean isUnlisted(HttpServletRequest request) {
    return Routes.need(request).isEmpty();
  }

  private static boolean isForPrograms(HttpServletRequest request) {
    String path = ReturnPath.of(request);
    return path.startsWith("/api/") || path.startsWith("/feed") || path.startsWith("/pictures/");
  }

  private static String signInFor(HttpServletRequest request) {
    String query = request.getQueryString();
    String path = ReturnPath.of(request) + (query == null ? "" : "?" + query);
    return request.getContextPath()
        + UriComponentsBuilder.fromPath("/sign-in")
            .queryParam("to", "{to}")
            .encode()
            .buildAndExpand(path)
            .toUriString();
  }
}
