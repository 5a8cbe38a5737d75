package club.yearline.accounts;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.security.web.csrf.CsrfTokenRepository;
import org.springframework.stereotype.Component;

/**
 * What tells the browser that was asked from any other: the cookie that its forms go with. So a
 * question costs no session.
 */
@Component
class PasskeyBrowser {

  private final CsrfTokenRepository tokens;

  PasskeyBrowser(CsrfTokenRepository tokens) {
    this.tokens = tokens;
  }

  /** Empty where the browser brings no such cookie; no form of it would be taken either. */
  String of(HttpServletRequest request) {
    CsrfToken token = tokens.loadToken(request);
    return token == null ? "" : token.getToken();
  }
}
