package club.yearline.upkeep;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/**
 * What a table holds, in short: two tables with the same rows, in whatever order, count alike.
 *
 * @param rows how many rows
 * @param digest the sum of the rows' SHA-256 digests, as a hexadecimal number of 256 bits
 */
record Counted(long rows, String digest) {

  /** Counts rows one by one. */
  static final class Counting {

    private static final BigInteger LIMIT = BigInteger.ONE.shiftLeft(256);

    private long rows;
    private BigInteger sum = BigInteger.ZERO;

    void add(String line) {
      rows++;
      sum = sum.add(new BigInteger(1, digest(line))).mod(LIMIT);
    }

    long rows() {
      return rows;
    }

    Counted counted() {
      return new Counted(rows, sum.toString(16));
    }

    private static byte[] digest(String line) {
      try {
        return MessageDigest.getInstance("SHA-256").digest(line.getBytes(StandardCharsets.UTF_8));
      } catch (NoSuchAlgorithmException e) {
        throw new IllegalStateException("Every Java has SHA-256", e);
      }
    }
  }
}
