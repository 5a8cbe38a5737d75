/**
 * Pages to browse the catalogue: families and variants, features, changes, sources, histories,
 * revisions.
 *
 * <p>Allowed dependencies: the catalogue, the engine, citations and the page layout.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"catalog", "effectivity", "citation", "web"})
package club.yearline.browse;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
