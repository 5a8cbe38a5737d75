/**
 * Pages to browse the catalogue: families and variants, features, changes, sources, histories,
 * revisions.
 *
 * <p>Allowed dependencies: the catalogue, the engine, citations, the page layout; the register and
 * people, for airframes that the box finds by their mark.
 */
@NullMarked
@ApplicationModule(
    allowedDependencies = {"catalog", "effectivity", "citation", "accounts", "fleet", "web"})
package club.yearline.browse;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
