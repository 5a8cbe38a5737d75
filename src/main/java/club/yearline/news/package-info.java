/**
 * Word gets round: the feed of revisions, watching, the inbox, and mail.
 *
 * <p>Allowed dependencies: the catalogue, corrections, people, the engine, and the page layout.
 */
@NullMarked
@ApplicationModule(
    allowedDependencies = {"catalog", "corrections", "accounts", "effectivity", "web"})
package club.yearline.news;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
