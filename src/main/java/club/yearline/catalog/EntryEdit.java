package club.yearline.catalog;

import club.yearline.effectivity.Entry;
import org.jspecify.annotations.Nullable;

/**
 * What a revision did to one entry.
 *
 * @param ref the entry
 * @param before how it read before; null where the revision added it
 * @param after how it reads since; null where the revision withdrew it
 */
public record EntryEdit(EntryRef ref, @Nullable Entry before, @Nullable Entry after) {}
