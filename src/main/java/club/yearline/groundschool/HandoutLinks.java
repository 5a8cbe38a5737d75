package club.yearline.groundschool;

import club.yearline.accounts.Addresses;
import club.yearline.catalog.Reading;
import jakarta.servlet.http.HttpServletRequest;

/**
 * Addresses of hand-outs.
 *
 * @param root the application's context path
 */
record HandoutLinks(String root) {

  private static final String BUILDER = "/ground-school";
  static final String PAGE = BUILDER + "/hand-out";
  static final String PDF = BUILDER + "/hand-out.pdf";

  static HandoutLinks of(HttpServletRequest request) {
    return new HandoutLinks(request.getContextPath());
  }

  /** The form filled with a choice, at the revision that is read. */
  String builder(Handout handout, Reading reading) {
    return root + reading.link(BUILDER + query(handout));
  }

  /** The hand-out at the revision that is read. */
  String page(Handout handout, Reading reading) {
    return root + reading.link(PAGE + query(handout));
  }

  /** The hand-out as PDF, at a revision. */
  String pdf(Handout handout, int revision, String paper) {
    return root + at(PDF, handout, revision) + "&paper=" + paper;
  }

  /** The hand-out at a revision. */
  String page(Handout handout, int revision) {
    return root + at(PAGE, handout, revision);
  }

  /** The full address of a hand-out for ever. */
  static String permalink(
      Handout handout, int revision, Addresses addresses, HttpServletRequest request) {
    return addresses.here(request, at(PAGE, handout, revision));
  }

  private static String at(String path, Handout handout, int revision) {
    String query = query(handout);
    return path + query + (query.isEmpty() ? "?" : "&") + "rev=" + revision;
  }

  private static String query(Handout handout) {
    String query = handout.query();
    return query.isEmpty() ? "" : "?" + query;
  }
}
