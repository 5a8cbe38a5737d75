package club.yearline.accounts;

import java.util.List;

/**
 * Every address that is open, in one place; whatever is not listed is denied. The order does not
 * matter here, since no pattern of one list covers a pattern of another.
 */
final class Routes {

  /** Static files: no account ever matters. */
  static final List<String> FILES =
      List.of("/css/**", "/js/**", "/webjars/**", "/favicon.svg", "/robots.txt");

  /** What anyone may read with GET or HEAD through the interface for programs. */
  static final List<String> API = List.of("/api/v1/**", "/api/openapi/**");

  /** Questions too long for an address; they change nothing. */
  static final List<String> API_QUESTIONS =
      List.of("/api/v1/spot", "/api/v1/inspect", "/api/v1/cut-in");

  /** Pages that anyone may read with GET or HEAD. */
  static final List<String> PAGES =
      List.of(
          "/",
          "/find",
          "/families/**",
          "/variants/**",
          "/features/**",
          "/changes/**",
          "/sources/**",
          "/pictures/**",
          "/expected/**",
          "/differences/**",
          "/spot/**",
          "/inspect/**",
          "/compare/**",
          "/revisions/**",
          "/findings/**",
          "/ground-school/**",
          "/problems/**");

  private Routes() {}
}
