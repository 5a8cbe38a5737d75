/**
 * The published catalogue: entries and their versions, revisions, snapshots and publication.
 *
 * <p>Allowed dependencies: the engine, citations, people, and the page layout.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"effectivity", "citation", "accounts", "web"})
package club.yearline.catalog;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
