package club.yearline.tables;

import java.util.List;

/**
 * Rows that name an entry as theirs, and no such entry is.
 *
 * @param table resource name of the table
 * @param by columns that name the entry
 * @param parent what they say, joined by {@code /}
 */
public record Orphan(String table, List<String> by, String parent) {}
