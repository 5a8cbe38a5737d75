package club.yearline.exchange;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/**
 * The bytes that a package may still unpack to, all files together. Counted as they are read: what
 * a zip says of its sizes is not trusted.
 */
final class Budget {

  /** The most that a package may unpack to. */
  static final long MOST = 200L * 1024 * 1024;

  private final String packageName;
  private final long most;
  private long used;

  Budget(String packageName, long most) {
    this.packageName = packageName;
    this.most = most;
  }

  /** The stream, which fails as soon as the budget is used up. */
  InputStream watch(InputStream in) {
    return new FilterInputStream(in) {
      @Override
      public int read() throws IOException {
        int b = super.read();
        spend(b < 0 ? 0 : 1);
        return b;
      }

      @Override
      public int read(byte[] into, int from, int length) throws IOException {
        int count = super.read(into, from, length);
        spend(Math.max(count, 0));
        return count;
      }

      @Override
      public long skip(long count) throws IOException {
        long skipped = super.skip(count);
        spend(skipped);
        return skipped;
      }
    };
  }

  private void spend(long bytes) {
    used += bytes;
    if (used > most) {
      throw new RefusedPackage(PackageProblem.of(packageName, "too-large", most / (1024 * 1024)));
    }
  }
}
