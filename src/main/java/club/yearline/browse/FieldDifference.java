package club.yearline.browse;

import java.util.List;

/**
 * One field of an entry that reads differently in two versions.
 *
 * @param field message key of its name
 * @param before lines that only the earlier version has
 * @param after lines that only the later version has
 */
record FieldDifference(String field, List<String> before, List<String> after) {}
