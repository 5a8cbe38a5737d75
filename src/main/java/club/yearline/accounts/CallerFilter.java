package club.yearline.accounts;

import club.yearline.web.Caller;
import club.yearline.web.Section;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.web.filter.OncePerRequestFilter;

/** Tells the frame of the pages who is looking. */
final class CallerFilter extends OncePerRequestFilter {

  private final Club club;
  private final ObjectProvider<DeskLink> links;

  CallerFilter(Club club, ObjectProvider<DeskLink> links) {
    this.club = club;
    this.links = links;
  }

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    request.setAttribute(Caller.class.getName(), caller(SignedInActor.current()));
    chain.doFilter(request, response);
  }

  private Caller caller(@Nullable Actor actor) {
    return actor == null
        ? new Caller(null, List.of(), !club.isClosed())
        : new Caller(actor.name(), links(actor), true);
  }

  private List<Section> links(Actor actor) {
    return links.stream()
        .filter(link -> actor.isAtLeast(link.least()))
        .sorted(Comparator.comparingInt(DeskLink::order))
        .map(link -> new Section(link.path(), link.label(), link.order()))
        .toList();
  }
}
