package club.yearline.catalog;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What was found for a typed text.
 *
 * @param text the text as typed, without the space around it
 * @param hits what it may mean, best first
 * @param year the year read in it; null where it names none
 * @param unread words of it that nothing in the catalogue resembles
 * @param more whether there are more hits than are listed
 */
public record Found(
    String text, List<Hit> hits, @Nullable Integer year, List<String> unread, boolean more) {

  public Found {
    hits = List.copyOf(hits);
    unread = List.copyOf(unread);
  }

  /** One thing that the text may mean, and how well it fits. */
  public record Hit(Meaning meaning, Closeness closeness) {}

  /** Whether it may mean nothing at all. */
  public boolean isEmpty() {
    return hits.isEmpty();
  }

  /**
   * The one thing that it means: the only exact hit, or the only hit if that is no guess. Never one
   * that rests on a slip of the pen, since the neighbour of a designation is another aircraft.
   */
  public Optional<Meaning> only() {
    if (hits.isEmpty() || hits.get(0).closeness().isGuess()) {
      return Optional.empty();
    }
    boolean alone = hits.size() == 1 && !more;
    boolean onlyExact =
        hits.get(0).closeness() == Closeness.EXACT
            && (hits.size() == 1 || hits.get(1).closeness() != Closeness.EXACT);
    return alone || onlyExact ? Optional.of(hits.get(0).meaning()) : Optional.empty();
  }
}
