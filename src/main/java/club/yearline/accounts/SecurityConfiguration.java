package club.yearline.accounts;

import jakarta.servlet.DispatcherType;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpMethod;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.DefaultSecurityFilterChain;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.header.HeaderWriter;
import org.springframework.security.web.header.HeaderWriterFilter;
import org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher;
import org.springframework.security.web.util.matcher.OrRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;

/**
 * Who may ask what. Three chains: static files and questions of programs pass a single filter that
 * writes headers (no account, no session and no cookie matters there, and the full chain would cost
 * more than the answer); everything else passes the full chain, where what is not listed is denied.
 */
@Configuration(proxyBeanMethods = false)
@ConditionalOnWebApplication
public class SecurityConfiguration {

  private static final Set<String> READING = Set.of("GET", "HEAD");

  private static final HeaderWriter HEADERS = new SafetyHeaders();

  @Bean
  @Order(1)
  SecurityFilterChain files() {
    return headersOnly(get(Routes.FILES));
  }

  @Bean
  @Order(2)
  SecurityFilterChain api() {
    List<RequestMatcher> open = new ArrayList<>(get(Routes.API));
    open.addAll(matchers(HttpMethod.POST, Routes.API_QUESTIONS));
    return headersOnly(open);
  }

  @Bean
  @Order(3)
  SecurityFilterChain pages(HttpSecurity http) throws Exception {
    return http.authorizeHttpRequests(
            requests ->
                requests
                    // The container comes back here to have an error rendered.
                    .dispatcherTypeMatchers(DispatcherType.ERROR)
                    .permitAll()
                    .requestMatchers(new OrRequestMatcher(get(Routes.PAGES)))
                    .permitAll()
                    .anyRequest()
                    .denyAll())
        .sessionManagement(s -> s.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
        .requestCache(AbstractHttpConfigurer::disable)
        .logout(AbstractHttpConfigurer::disable)
        .exceptionHandling(e -> e.authenticationEntryPoint(SecurityConfiguration::turnAway))
        .headers(headers -> headers.defaultsDisabled().addHeaderWriter(HEADERS))
        .build();
  }

  /**
   * Somebody without an account who mistypes an address should hear that there is no such page, and
   * learns nothing about pages that are there for others.
   */
  private static void turnAway(
      HttpServletRequest request, HttpServletResponse response, AuthenticationException e)
      throws IOException {
    boolean reads = READING.contains(request.getMethod());
    response.sendError(reads ? HttpServletResponse.SC_NOT_FOUND : HttpServletResponse.SC_FORBIDDEN);
  }

  private static SecurityFilterChain headersOnly(List<RequestMatcher> matchers) {
    return new DefaultSecurityFilterChain(
        new OrRequestMatcher(matchers), new HeaderWriterFilter(List.of(HEADERS)));
  }

  private static List<RequestMatcher> get(List<String> patterns) {
    List<RequestMatcher> all = matchers(HttpMethod.GET, patterns);
    all.addAll(matchers(HttpMethod.HEAD, patterns));
    return all;
  }

  private static List<RequestMatcher> matchers(HttpMethod method, List<String> patterns) {
    PathPatternRequestMatcher.Builder builder = PathPatternRequestMatcher.withDefaults();
    List<RequestMatcher> matchers = new ArrayList<>();
    patterns.forEach(pattern -> matchers.add(builder.matcher(method, pattern)));
    return matchers;
  }
}
