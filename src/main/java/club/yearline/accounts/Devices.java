package club.yearline.accounts;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.web.util.WebUtils;

/** Browsers that have signed in to an account before, so that they are told from strangers. */
@Repository
class Devices {

  static final String COOKIE = "yearline-device";

  private static final Duration KEPT = Duration.ofDays(365);

  private final JdbcClient jdbc;

  Devices(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** The secret that a browser brings; null if it brings none. */
  static @Nullable String secret(HttpServletRequest request) {
    Cookie cookie = WebUtils.getCookie(request, COOKIE);
    return cookie == null ? null : cookie.getValue();
  }

  boolean isKnown(long person, @Nullable String secret) {
    return secret != null
        && jdbc.sql("select count(*) from known_device where person_id = :id and hash = :hash")
                .param("id", person)
                .param("hash", Secret.hash(secret))
                .query(Integer.class)
                .single()
            > 0;
  }

  /** Remembers the browser that has just signed in. */
  void remember(long person, HttpServletRequest request, HttpServletResponse response) {
    String known = secret(request);
    if (isKnown(person, known)) {
      return;
    }
    String secret = Secret.fresh();
    jdbc.sql("insert into known_device (person_id, hash, seen_at) values (:id, :hash, :now)")
        .param("id", person)
        .param("hash", Secret.hash(secret))
        .param("now", Accounts.now())
        .update();
    response.addHeader(HttpHeaders.SET_COOKIE, cookie(secret, request).toString());
  }

  void forgetAll(long person) {
    jdbc.sql("delete from known_device where person_id = :id").param("id", person).update();
  }

  void forgetOld() {
    jdbc.sql("delete from known_device where seen_at < :old")
        .param("old", Accounts.now().minus(KEPT))
        .update();
  }

  private static ResponseCookie cookie(String secret, HttpServletRequest request) {
    return ResponseCookie.from(COOKIE, secret)
        .path(request.getContextPath() + "/")
        .maxAge(KEPT)
        .httpOnly(true)
        .secure(request.isSecure())
        .sameSite("Lax")
        .build();
  }
}
