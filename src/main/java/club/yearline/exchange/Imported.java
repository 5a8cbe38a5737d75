package club.yearline.exchange;

import club.yearline.catalog.Revision;
import org.jspecify.annotations.Nullable;

/**
 * What became of an import.
 *
 * @param reading what was read, with all problems
 * @param revision the revision that it made; null where it was refused
 */
record Imported(PackageReading reading, @Nullable Revision revision) {}
