/**
 * Entries as rows of the format's tables: what a cell may hold, rows read into entries, entries
 * written as rows.
 *
 * <p>Allowed dependencies: the engine's entry types, and citations.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"effectivity", "citation"})
package club.yearline.tables;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
