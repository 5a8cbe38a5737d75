package club.yearline.accounts;

import jakarta.servlet.DispatcherType;
import java.util.List;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import org.springframework.core.annotation.Order;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.DefaultSecurityFilterChain;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.context.SecurityContextHolderFilter;
import org.springframework.security.web.csrf.CsrfFilter;
import org.springframework.security.web.csrf.CsrfTokenRepository;
import org.springframework.security.web.header.HeaderWriter;
import org.springframework.security.web.header.HeaderWriterFilter;
import org.springframework.security.web.util.matcher.RequestMatcher;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/**
 * Who may ask what. Three chains: static files and, while the catalogue is open, questions of
 * programs pass a single filter that writes headers (no account, no session and no cookie matters
 * there, and the full chain would cost more than the answer); everything else passes the full
 * chain, where what is not listed in {@link Routes} is denied.
 */
@Configuration(proxyBeanMethods = false)
@ConditionalOnWebApplication
@Import({Club.class, ActorSetup.class, SessionSetup.class})
public class SecurityConfiguration {

  private static final HeaderWriter HEADERS = new SafetyHeaders();

  @Bean
  @Order(1)
  SecurityFilterChain files() {
    return headersOnly(Routes.FILES);
  }

  @Bean
  @Order(2)
  SecurityFilterChain api(Club club) {
    return headersOnly(request -> !club.isClosed() && Routes.API.matches(request));
  }

  @Bean
  @Order(3)
  SecurityFilterChain pages(
      HttpSecurity http,
      Club club,
      CsrfTokenRepository tokens,
      ObjectProvider<People> people,
      ObjectProvider<DeskLink> links,
      ObjectProvider<RequestMappingHandlerMapping> mappings)
      throws Exception {
    TurnAway turnAway = new TurnAway(new Signposts(mappings));
    return http.authorizeHttpRequests(
            requests ->
                requests
                    // The container comes back here to have an error rendered.
                    .dispatcherTypeMatchers(DispatcherType.ERROR)
                    .permitAll()
                    .anyRequest()
                    .access(new Doors(club)))
        .securityContext(c -> c.securityContextRepository(new SignedInSessions(people)))
        .sessionManagement(s -> s.sessionCreationPolicy(SessionCreationPolicy.NEVER))
        .csrf(c -> c.csrfTokenRepository(tokens).ignoringRequestMatchers(Routes.API_QUESTIONS))
        .requestCache(AbstractHttpConfigurer::disable)
        .logout(AbstractHttpConfigurer::disable)
        .exceptionHandling(e -> e.authenticationEntryPoint(turnAway).accessDeniedHandler(turnAway))
        .addFilterAfter(new CallerFilter(club, links), SecurityContextHolderFilter.class)
        .addFilterBefore(new OriginFilter(), CsrfFilter.class)
        .headers(SecurityConfiguration::headers)
        .build();
  }

  private static void headers(HeadersConfigurer<HttpSecurity> headers) {
    headers.defaultsDisabled().addHeaderWriter(HEADERS).addHeaderWriter(new PrivacyHeaders());
  }

  private static SecurityFilterChain headersOnly(RequestMatcher matcher) {
    return new DefaultSecurityFilterChain(matcher, new HeaderWriterFilter(List.of(HEADERS)));
  }
}
