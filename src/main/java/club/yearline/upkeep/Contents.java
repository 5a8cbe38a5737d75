package club.yearline.upkeep;

import java.util.Map;

/**
 * What a backup says of itself.
 *
 * @param format version of the form of backups
 * @param schema version of the schema that its tables have
 * @param made when it was made, in UTC
 * @param tables what each table holds, in an order in which they can be filled
 * @param sequences the next number of each sequence
 * @param counters the next number of the tables that count by themselves
 */
record Contents(
    int format,
    String schema,
    String made,
    Map<String, Counted> tables,
    Map<String, Long> sequences,
    Map<String, Long> counters) {

  /** The form that this version writes and reads. */
  static final int FORMAT = 1;

  static final String NAME = "backup.json";

  static String nameOf(String table) {
    return "tables/" + table + ".jsonl";
  }

  long rows() {
    return tables.values().stream().mapToLong(Counted::rows).sum();
  }
}
