/**
 * Variants compared by their figures: side by side in the reader's units, what follows from the
 * figures by arithmetic, who can fly a trip, and which variant suits it; and the page of it.
 *
 * <p>Allowed dependencies: the catalogue's readings, the engine, citations, and the page layout.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"catalog", "effectivity", "citation", "web"})
package club.yearline.compare;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
