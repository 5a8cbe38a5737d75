/**
 * Ground school: hand-outs with timelines, values and sources, to print and as PDF, and wall charts
 * of a family.
 *
 * <p>Allowed dependencies: the catalogue's readings, the engine, citations in their styles, the
 * browsing pages' timelines, paper, people (for saved hand-outs), and the page layout.
 */
@NullMarked
@ApplicationModule(
    allowedDependencies = {
      "catalog",
      "effectivity",
      "citation",
      "citing",
      "browse",
      "print",
      "accounts",
      "web"
    })
package club.yearline.groundschool;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
