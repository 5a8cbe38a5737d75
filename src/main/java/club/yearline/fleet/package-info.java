/**
 * The register: airframes that members look after, what was seen on them, with photographs, and
 * what of that serves as evidence.
 *
 * <p>Allowed dependencies: the catalogue, people, the engine, what uploaded bytes are, and the page
 * layout.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"catalog", "accounts", "effectivity", "uploads", "web"})
package club.yearline.fleet;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
