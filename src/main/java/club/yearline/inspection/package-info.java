/**
 * Does this one match its papers: observations of a claimed serial or year become findings, a
 * verdict, and questions for the logbooks. A pure core (domain: "inspection"), its pages, and its
 * report on paper.
 *
 * <p>Allowed dependencies: spotting's shares, the resolving of claims in {@code expected}, the
 * register, people, what uploaded bytes are, the catalogue, the engine, paper, and the page layout.
 */
@NullMarked
@ApplicationModule(
    allowedDependencies = {
      "spotting",
      "expected",
      "fleet",
      "accounts",
      "uploads",
      "catalog",
      "effectivity",
      "print",
      "web"
    })
package club.yearline.inspection;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
