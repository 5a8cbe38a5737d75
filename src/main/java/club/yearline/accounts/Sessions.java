package club.yearline.accounts;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.security.web.csrf.CsrfTokenRepository;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.session.Session;
import org.springframework.stereotype.Component;

/** Begins, lists and ends sessions. */
@Component
class Sessions {

  private static final String DEVICE = "yearline.device";
  private static final int LONGEST_DEVICE = 300;

  private final CsrfTokenRepository tokens;
  private final ObjectProvider<FindByIndexNameSessionRepository<?>> stored;

  Sessions(CsrfTokenRepository tokens, ObjectProvider<FindByIndexNameSessionRepository<?>> stored) {
    this.tokens = tokens;
    this.stored = stored;
  }

  /**
   * One session of a person.
   *
   * @param handle stands for the session in forms: its own number would open it
   * @param device what the browser said it is
   */
  record Known(String handle, String device, Instant since, Instant lastSeen, boolean current) {}

  /** Begins a session of a person, under a number that nobody can have known before. */
  HttpSession begin(long person, HttpServletRequest request, HttpServletResponse response) {
    HttpSession session = renew(request, response);
    session.setAttribute(SignedInSessions.PERSON, person);
    session.setAttribute(SignedInSessions.SINCE, Instant.now());
    session.setAttribute(DEVICE, device(request));
    session.setAttribute(
        FindByIndexNameSessionRepository.PRINCIPAL_NAME_INDEX_NAME, Long.toString(person));
    return session;
  }

  /** A session that belongs to nobody yet. */
  HttpSession renew(HttpServletRequest request, HttpServletResponse response) {
    end(request, response);
    return request.getSession(true);
  }

  void end(HttpServletRequest request, HttpServletResponse response) {
    HttpSession session = request.getSession(false);
    if (session != null) {
      session.invalidate();
    }
    tokens.saveToken(null, request, response);
  }

  /** The sessions of a person, the latest first. */
  List<Known> of(long person, @Nullable HttpSession current) {
    String own = current == null ? "" : current.getId();
    return sessions(person).stream()
        .map(session -> known(session, own))
        .sorted(Comparator.comparing(Known::lastSeen).reversed())
        .toList();
  }

  /** Ends one session of a person; false if there is none with this handle. */
  boolean end(long person, String handle) {
    return sessions(person).stream()
            .filter(session -> Secret.hash(session.getId()).equals(handle))
            .peek(session -> repository().deleteById(session.getId()))
            .count()
        > 0;
  }

  void endAll(long person) {
    endAllBut(person, null);
  }

  void endAllBut(long person, @Nullable HttpSession kept) {
    sessions(person).stream()
        .map(Session::getId)
        .filter(id -> kept == null || !id.equals(kept.getId()))
        .forEach(id -> repository().deleteById(id));
  }

  private List<Session> sessions(long person) {
    return List.copyOf(repository().findByPrincipalName(Long.toString(person)).values());
  }

  private FindByIndexNameSessionRepository<?> repository() {
    return stored.getObject();
  }

  private static Known known(Session session, String own) {
    Instant since = session.getAttribute(SignedInSessions.SINCE);
    String device = session.getAttribute(DEVICE);
    return new Known(
        Secret.hash(session.getId()),
        Objects.requireNonNullElse(device, ""),
        Objects.requireNonNullElse(since, session.getCreationTime()),
        session.getLastAccessedTime(),
        session.getId().equals(own));
  }

  private static String device(HttpServletRequest request) {
    String agent = request.getHeader("User-Agent");
    String text = agent == null ? "" : agent;
    return text.length() <= LONGEST_DEVICE ? text : text.substring(0, LONGEST_DEVICE);
  }
}
