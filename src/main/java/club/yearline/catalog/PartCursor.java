package club.yearline.catalog;

import java.util.Iterator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Walks rows of (version number, part) in step with the versions they belong to. */
final class PartCursor implements AutoCloseable {

  private final Stream<Object[]> rows;
  private final Iterator<Object[]> iterator;
  private Object @Nullable [] ahead;

  PartCursor(Stream<Object[]> rows) {
    this.rows = rows;
    iterator = rows.iterator();
    ahead = next();
  }

  /** The parts of a version; versions are asked for in ascending order. */
  Stream<Object> of(long version) {
    Stream.Builder<Object> parts = Stream.builder();
    while (ahead != null && (Long) ahead[0] == version) {
      parts.add(ahead[1]);
      ahead = next();
    }
    return parts.build();
  }

  @Override
  public void close() {
    rows.close();
  }

  private Object @Nullable [] next() {
    return iterator.hasNext() ? iterator.next() : null;
  }
}
