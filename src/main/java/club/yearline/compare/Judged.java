package club.yearline.compare;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How something stands to a trip, as shown.
 *
 * @param name the variant-year, or the variant and its years
 * @param href where it leads; null where nowhere
 * @param mark classes of the outcome's mark
 * @param word the outcome in words
 * @param left what is left over; empty where that cannot be told
 * @param reasons why, in words
 */
public record Judged(
    String name,
    @Nullable String href,
    String mark,
    String word,
    String left,
    List<String> reasons) {}
