package club.yearline.corrections;

import club.yearline.catalog.EntryRef;
import club.yearline.tables.Sheet;
import org.jspecify.annotations.Nullable;

/**
 * What is proposed for one entry.
 *
 * @param ref the entry
 * @param sheet how it shall read; null where it shall be withdrawn
 * @param base the revision at which its author saw it
 */
record Proposal(EntryRef ref, @Nullable Sheet sheet, int base) {}
