package club.yearline.catalog;

import club.yearline.effectivity.Catalogue;
import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.function.Function;

/**
 * Something worked out from a whole catalogue: once for each of its states, when first asked for,
 * kept for the few states that are read. What is kept must not hold the catalogue, which would keep
 * its own key alive.
 */
public final class PerCatalogue<T> {

  private static final int STATES = 4;

  private final Cache<Catalogue, T> kept =
      Caffeine.newBuilder().weakKeys().maximumSize(STATES).build();
  private final Function<Catalogue, T> work;

  /** Keeps what the given work makes of a catalogue. */
  public PerCatalogue(Function<Catalogue, T> work) {
    this.work = work;
  }

  /** What the work makes of the catalogue; others who ask at the same moment wait for it. */
  public T of(Catalogue catalogue) {
    return kept.get(catalogue, work);
  }
}
