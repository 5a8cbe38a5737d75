package club.yearline.web;

import org.jspecify.annotations.Nullable;

/**
 * One step of the way to a page.
 *
 * @param name as shown
 * @param path the address; null for the page itself
 */
public record Crumb(String name, @Nullable String path) {

  /** The page itself, the last step. */
  public static Crumb here(String name) {
    return new Crumb(name, null);
  }
}
