/**
 * What an airframe should have: the expected configuration of a serial or a variant and year, of a
 * list of serials, and the differences of two variant-years, as pages.
 *
 * <p>Allowed dependencies: the catalogue's readings, the engine, citations, and the page layout.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"catalog", "effectivity", "citation", "web"})
package club.yearline.expected;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
