package club.yearline.accounts;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authorization.AuthorizationDecision;
import org.springframework.security.authorization.AuthorizationManager;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.access.intercept.RequestAuthorizationContext;

/** Lets a request through or not, by the table of {@link Routes} and the club's settings. */
final class Doors implements AuthorizationManager<RequestAuthorizationContext> {

  private final Club club;

  Doors(Club club) {
    this.club = club;
  }

  @Override
  public AuthorizationDecision authorize(
      Supplier<? extends @Nullable Authentication> who, RequestAuthorizationContext context) {
    return new AuthorizationDecision(
        Routes.need(context.getRequest()).filter(need -> allows(need, who)).isPresent());
  }

  private boolean allows(Routes.Need need, Supplier<? extends @Nullable Authentication> who) {
    return switch (need) {
      case NOTHING -> true;
      case READING -> !club.isClosed() || is(Role.MEMBER, who);
      case MEMBER -> is(Role.MEMBER, who);
      case MODERATOR -> is(Role.MODERATOR, who);
      case KEEPER -> is(Role.KEEPER, who);
    };
  }

  private static boolean is(Role least, Supplier<? extends @Nullable Authentication> who) {
    Actor actor = SignedInActor.of(who.get());
    return actor != null && actor.isAtLeast(least);
  }
}
