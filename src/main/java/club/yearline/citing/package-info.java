/**
 * Cite this: pages of the catalogue and its sources as text in the published styles and as files,
 * with the permalink. Knows other modules' pages by their addresses only.
 *
 * <p>Allowed dependencies: the catalogue's readings, the engine, citations, the club's name, and
 * the page layout.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"catalog", "effectivity", "citation", "accounts", "web"})
package club.yearline.citing;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
