/**
 * Does this one match its papers: observations of a claimed serial or year become findings and a
 * verdict. A pure core (domain: "inspection").
 *
 * <p>Allowed dependencies: spotting's shares, and the engine.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"spotting", "effectivity"})
package club.yearline.inspection;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
