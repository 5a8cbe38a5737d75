package club.yearline.web;

import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.springframework.web.util.UriComponentsBuilder;

/**
 * The pages of a long list, linked at its end by {@code fragments/page :: pages}.
 *
 * @param address address of the list with its question; the page number is added as {@code page}
 * @param current the page shown, counted from 1
 * @param count how many pages there are
 */
public record Pages(String address, int current, int count) {

  /** How many neighbours on each side are linked. */
  private static final int NEIGHBOURS = 2;

  public Pages {
    if (current < 1 || current > Math.max(count, 1)) {
      throw new IllegalArgumentException("Page " + current + " of " + count);
    }
  }

  /**
   * A link to one page.
   *
   * @param number counted from 1
   * @param path its address; null for the page shown
   */
  public record Page(int number, @Nullable String path) {}

  /** The address of the page before; null on the first. */
  public @Nullable String previous() {
    return current > 1 ? to(current - 1) : null;
  }

  /** The address of the page after; null on the last. */
  public @Nullable String next() {
    return current < count ? to(current + 1) : null;
  }

  /** The first, the last and the neighbours of the page shown. */
  public List<Page> shown() {
    return IntStream.rangeClosed(1, count)
        .filter(n -> n == 1 || n == count || Math.abs(n - current) <= NEIGHBOURS)
        .mapToObj(n -> new Page(n, n == current ? null : to(n)))
        .toList();
  }

  private String to(int number) {
    return UriComponentsBuilder.fromUriString(address)
        .replaceQueryParam("page", number)
        .build()
        .toUriString();
  }
}
