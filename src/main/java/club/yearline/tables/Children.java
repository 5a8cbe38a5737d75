package club.yearline.tables;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Rows read before the entries that hold them. */
final class Children<T> {

  private final Map<String, List<T>> byParent = new HashMap<>();

  void add(String parent, T child) {
    byParent.computeIfAbsent(parent, k -> new ArrayList<>(2)).add(child);
  }

  /** Hands over the rows of an entry; they are no orphans then. */
  List<T> take(String parent) {
    List<T> children = byParent.remove(parent);
    return children == null ? List.of() : children;
  }

  /** The parents that rows name and no entry is. */
  Set<String> orphans() {
    return byParent.keySet();
  }
}
