package club.yearline.tables;

import java.util.List;

/**
 * A table of the data package.
 *
 * @param name its resource name, such as {@code cut-ins}
 * @param path its file, such as {@code cut_ins.csv}
 * @param fields its columns, in the order of writing
 * @param primaryKey the columns that tell its rows apart and order them
 */
public record TableSchema(String name, String path, List<Field> fields, List<Field> primaryKey) {

  /** The names of its columns, in the order of writing. */
  public List<String> header() {
    return fields.stream().map(Field::name).toList();
  }

  /** The names of the columns of its primary key. */
  public List<String> keyColumns() {
    return primaryKey.stream().map(Field::name).toList();
  }

  /** Where the columns of the primary key stand in a written row. */
  public int[] keyPositions() {
    return primaryKey.stream().mapToInt(fields::indexOf).toArray();
  }
}
