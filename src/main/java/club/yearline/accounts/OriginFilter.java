package club.yearline.accounts;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Set;
import org.springframework.web.filter.OncePerRequestFilter;

/** Refuses what the browser says another site has made it send. */
final class OriginFilter extends OncePerRequestFilter {

  private static final Set<String> READ = Set.of("GET", "HEAD", "OPTIONS", "TRACE");

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    if (READ.contains(request.getMethod()) || Origins.isOurs(request)) {
      chain.doFilter(request, response);
    } else {
      response.sendError(HttpServletResponse.SC_FORBIDDEN);
    }
  }
}
