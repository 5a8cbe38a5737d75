/**
 * Where a change cut in, by the airframes of the register: the estimate in a drawing and in words,
 * and the correction that narrows the record by it.
 *
 * <p>Allowed dependencies: the catalogue, the estimates, the register, corrections, people, the
 * engine, citations, and the page layout.
 */
@NullMarked
@ApplicationModule(
    allowedDependencies = {
      "catalog",
      "estimation",
      "fleet",
      "corrections",
      "accounts",
      "effectivity",
      "citation",
      "web"
    })
package club.yearline.evidence;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
