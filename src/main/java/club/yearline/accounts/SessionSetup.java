package club.yearline.accounts;

import java.sql.Connection;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.web.csrf.CookieCsrfTokenRepository;
import org.springframework.security.web.csrf.CsrfTokenRepository;
import org.springframework.session.config.SessionRepositoryCustomizer;
import org.springframework.session.jdbc.JdbcIndexedSessionRepository;
import org.springframework.session.jdbc.PostgreSqlJdbcIndexedSessionRepositoryCustomizer;
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

  /** Two requests of one session may write the same attribute at once; PostgreSQL can sort it. */
  @Bean
  SessionRepositoryCustomizer<JdbcIndexedSessionRepository> sessionWriting(
      ObjectProvider<DataSource> database) {
    return sessions -> {
      if (isPostgres(database.getObject())) {
        new PostgreSqlJdbcIndexedSessionRepositoryCustomizer().customize(sessions);
      }
    };
  }

  private static boolean isPostgres(DataSource database) {
    try (Connection connection = database.getConnection()) {
      return connection.getMetaData().getDatabaseProductName().equals("PostgreSQL");
    } catch (SQLException e) {
      throw new IllegalStateException("The database does not say what it is", e);
    }
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
