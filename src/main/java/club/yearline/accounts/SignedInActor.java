package club.yearline.accounts;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.AbstractAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.context.SecurityContextHolder;

/** A person who has signed in, for the framework. It is made anew for each request. */
final class SignedInActor extends AbstractAuthenticationToken {

  private static final long serialVersionUID = 1L;

  private final transient Actor actor;

  SignedInActor(Actor actor) {
    super(List.of(new SimpleGrantedAuthority("ROLE_" + actor.role())));
    this.actor = actor;
    super.setAuthenticated(true);
  }

  /** Who an authentication stands for; null if nobody has signed in. */
  static @Nullable Actor of(@Nullable Authentication authentication) {
    return authentication instanceof SignedInActor token && token.isAuthenticated()
        ? token.actor
        : null;
  }

  /** Who the present request comes from; null for a visitor. */
  static @Nullable Actor current() {
    return of(SecurityContextHolder.getContext().getAuthentication());
  }

  @Override
  public Object getPrincipal() {
    return actor;
  }

  @Override
  public @Nullable Object getCredentials() {
    return null;
  }

  @Override
  public String getName() {
    return Long.toString(actor.id());
  }
}
