package club.yearline.accounts;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.security.core.context.DeferredSecurityContext;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.security.web.context.HttpRequestResponseHolder;
import org.springframework.security.web.context.SecurityContextRepository;

/**
 * Finds out who a session belongs to. A session holds the id of a person only; name and role are
 * read for each request, so that an account that is closed or loses its role does so at once.
 */
final class SignedInSessions implements SecurityContextRepository {

  static final String PERSON = "yearline.person";
  static final String SINCE = "yearline.since";

  /** However busy it is kept, a session ends after this long. */
  static final Duration LONGEST = Duration.ofDays(30);

  private final ObjectProvider<People> people;

  SignedInSessions(ObjectProvider<People> people) {
    this.people = people;
  }

  @Override
  public DeferredSecurityContext loadDeferredContext(HttpServletRequest request) {
    return new Deferred(request);
  }

  @Override
  @Deprecated
  public SecurityContext loadContext(HttpRequestResponseHolder holder) {
    return context(holder.getRequest());
  }

  /** Nothing to do: signing in writes the session itself. */
  @Override
  public void saveContext(
      SecurityContext context, HttpServletRequest request, HttpServletResponse response) {}

  @Override
  public boolean containsContext(HttpServletRequest request) {
    return actor(request).isPresent();
  }

  private SecurityContext context(HttpServletRequest request) {
    return actor(request)
        .<SecurityContext>map(actor -> new SecurityContextImpl(new SignedInActor(actor)))
        .orElseGet(SecurityContextHolder::createEmptyContext);
  }

  private Optional<Actor> actor(HttpServletRequest request) {
    HttpSession session = request.getSession(false);
    if (session == null
        || !(session.getAttribute(PERSON) instanceof Long id)
        || !(session.getAttribute(SINCE) instanceof Instant since)
        || since.plus(LONGEST).isBefore(Instant.now())) {
      return Optional.empty();
    }
    People known = people.getIfAvailable();
    return known == null ? Optional.empty() : known.find(id);
  }

  /** Asks once, and only if somebody wants to know. */
  private final class Deferred implements DeferredSecurityContext {

    private final HttpServletRequest request;
    private @Nullable SecurityContext context;

    Deferred(HttpServletRequest request) {
      this.request = request;
    }

    @Override
    public SecurityContext get() {
      SecurityContext known = context;
      if (known == null) {
        known = context(request);
        context = known;
      }
      return known;
    }

    @Override
    public boolean isGenerated() {
      return false;
    }
  }
}
