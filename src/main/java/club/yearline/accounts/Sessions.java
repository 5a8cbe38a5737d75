package club.yearline.accounts;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.time.Instant;
import org.springframework.security.web.csrf.CsrfTokenRepository;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.stereotype.Component;

/** Begins and ends sessions. */
@Component
class Sessions {

  static final String DEVICE = "yearline.device";

  private static final int LONGEST_DEVICE = 300;

  private final CsrfTokenRepository tokens;

  Sessions(CsrfTokenRepository tokens) {
    this.tokens = tokens;
  }

  /** Begins a session of a person, under a number that nobody can have known before. */
  HttpSession begin(long person, HttpServletRequest request, HttpServletResponse response) {
    HttpSession before = request.getSession(false);
    if (before != null) {
      before.invalidate();
    }
    HttpSession session = request.getSession(true);
    session.setAttribute(SignedInSessions.PERSON, person);
    session.setAttribute(SignedInSessions.SINCE, Instant.now());
    session.setAttribute(DEVICE, device(request));
    session.setAttribute(
        FindByIndexNameSessionRepository.PRINCIPAL_NAME_INDEX_NAME, Long.toString(person));
    tokens.saveToken(null, request, response);
    return session;
  }

  void end(HttpServletRequest request, HttpServletResponse response) {
    HttpSession session = request.getSession(false);
    if (session != null) {
      session.invalidate();
    }
    tokens.saveToken(null, request, response);
  }

  private static String device(HttpServletRequest request) {
    String agent = request.getHeader("User-Agent");
    String text = agent == null ? "" : agent;
    return text.length() <= LONGEST_DEVICE ? text : text.substring(0, LONGEST_DEVICE);
  }
}
