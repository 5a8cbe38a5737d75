package club.yearline.corrections;

import org.jspecify.annotations.Nullable;

/**
 * Something that a correction and a publication since then both changed, each in another way.
 *
 * @param table resource name of the table; empty where the whole entry clashes, because one side
 *     withdraws what the other changes
 * @param row what tells the row from the entry's others in the table
 * @param column the cell that clashes; empty where the whole row does, because one side removes
 *     what the other changes
 * @param base what it was when the correction was begun; null where there was nothing
 * @param mine what the correction makes of it; null where it removes it
 * @param theirs what is published now; null where it is gone
 */
record Clash(
    String table,
    String row,
    String column,
    @Nullable String base,
    @Nullable String mine,
    @Nullable String theirs) {

  /** Which side of a clash shall stand. */
  enum Side {
    MINE,
    THEIRS
  }

  /** Names the clash among those of one entry, as answers to it are given. */
  String id() {
    return table + "|" + row + "|" + column;
  }
}
