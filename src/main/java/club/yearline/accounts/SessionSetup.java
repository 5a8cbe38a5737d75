package club.yearline.accounts;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.web.csrf.CookieCsrfTokenRepository;
import org.springframework.security.web.csrf.CsrfTokenRepository;
import org.springframework.session.web.http.CookieSerializer;
import org.springframework.session.web.http.DefaultCookieSerializer;

/** How a browser keeps its session, and the token of its forms. */
@Configuration(proxyBeanMethods = false)
class SessionSetup {

  static final String COOKIE = "yearline";

  /** Where the site is secured, the cookie is sent over secured connections only. */
  @Bean
  CookieSerializer sessionCookie() {
    DefaultCookieSerializer cookie = new DefaultCookieSerializer();
    cookie.setCookieName(COOKIE);
    cookie.setUseHttpOnlyCookie(true);
    cookie.setSameSite("Lax");
    return cookie;
  }

  /**
   * The token of forms lives in a cookie of its own rather than in the session, so that a visitor
   * who opens the sign-in page costs no row in the database, and a form outlives a lost session.
   */
  @Bean
  CsrfTokenRepository formTokens() {
    CookieCsrfTokenRepository tokens = new CookieCsrfTokenRepository();
    tokens.setCookieName("yearline-form");
    tokens.setCookieCustomizer(cookie -> cookie.httpOnly(true).sameSite("Lax"));
    return tokens;
  }
}
