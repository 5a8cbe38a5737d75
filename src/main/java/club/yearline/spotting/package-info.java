/**
 * What is this one: variants and years ranked by what was seen, and the best next question. A pure
 * core (domain: "spotting") and its pages.
 *
 * <p>Allowed dependencies: the catalogue's readings, the engine, and the page layout.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"catalog", "effectivity", "web"})
package club.yearline.spotting;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
