package club.yearline.accounts;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.security.web.DefaultSecurityFilterChain;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.header.HeaderWriterFilter;
import org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher;
import org.springframework.security.web.util.matcher.OrRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;
import org.springframework.web.HttpRequestMethodNotSupportedException;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import org.springframework.web.util.ServletRequestPathUtils;

/**
 * Lets a request pass whose address is open and has no answer to its method, so that it hears which
 * methods there are (405) rather than that it lacks a right. No controller ever sees it.
 */
@Configuration(proxyBeanMethods = false)
@ConditionalOnWebApplication
class WrongMethods {

  private static final Set<String> READING = Set.of("GET", "HEAD");

  @Bean
  @Order(0)
  SecurityFilterChain unansweredMethods(
      @Qualifier("requestMappingHandlerMapping")
          ObjectProvider<RequestMappingHandlerMapping> controllers) {
    RequestMatcher open = new OrRequestMatcher(open());
    return new DefaultSecurityFilterChain(
        request ->
            !READING.contains(request.getMethod())
                && open.matches(request)
                && isUnanswered(controllers.getObject(), request),
        new HeaderWriterFilter(List.of(new SafetyHeaders())));
  }

  private static List<RequestMatcher> open() {
    PathPatternRequestMatcher.Builder paths = PathPatternRequestMatcher.withDefaults();
    return Stream.of(Routes.API, Routes.PAGES)
        .flatMap(List::stream)
        .<RequestMatcher>map(paths::matcher)
        .toList();
  }

  private static boolean isUnanswered(
      RequestMappingHandlerMapping mapping, HttpServletRequest request) {
    boolean parsed = ServletRequestPathUtils.hasParsedRequestPath(request);
    try {
      if (!parsed) {
        ServletRequestPathUtils.parseAndCache(request);
      }
      mapping.getHandler(request);
      return false;
    } catch (HttpRequestMethodNotSupportedException e) {
      return true;
    } catch (Exception e) {
      // Any other trouble is for the chain that the request belongs to.
      return false;
    } finally {
      if (!parsed) {
        ServletRequestPathUtils.clearParsedRequestPath(request);
      }
    }
  }
}
