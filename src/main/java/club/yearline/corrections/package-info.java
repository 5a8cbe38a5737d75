/**
 * Corrections: what members propose, its discussion, its merging with what was published meanwhile,
 * its moderation, and undo.
 *
 * <p>Allowed dependencies: the catalogue, people, entries as rows, the engine, citations, the
 * comparison of two states, what uploaded bytes are, and the page layout.
 */
@NullMarked
@ApplicationModule(
    allowedDependencies = {
      "catalog",
      "accounts",
      "tables",
      "effectivity",
      "citation",
      "browse",
      "uploads",
      "web"
    })
package club.yearline.corrections;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
