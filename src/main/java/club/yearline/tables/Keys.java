package club.yearline.tables;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One text for equal keys: most cells name something that many others name. */
final class Keys {

  private final Map<String, String> pool = new HashMap<>();

  String of(Row row, String column) {
    return pool.computeIfAbsent(row.text(column), text -> text);
  }

  @Nullable String orNull(Row row, String column) {
    return row.text(column).isEmpty() ? null : of(row, column);
  }
}
