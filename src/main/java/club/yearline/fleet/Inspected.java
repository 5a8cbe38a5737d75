package club.yearline.fleet;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An inspection to store in the register.
 *
 * @param id given by the inspector's device; whatever is sent again under it is stored already
 * @param airframe number of one of the inspector's own airframes; null for one to register
 * @param fresh the airframe to register; null for one that is there. If the inspector has one of
 *     that serial already, the observations go to that one
 * @param seen what was seen
 */
public record Inspected(
    UUID id, @Nullable Long airframe, @Nullable NewAirframe fresh, List<Seen> seen) {

  /** The most observations of one inspection: more than any catalogue has features. */
  public static final int MOST = 2000;

  public Inspected {
    seen = List.copyOf(seen);
    if ((airframe == null) == (fresh == null)) {
      throw new IllegalArgumentException("An inspection is of one airframe, known or new");
    }
    if (seen.size() > MOST) {
      throw new IllegalArgumentException("An inspection has " + MOST + " observations at most");
    }
  }

  /** An inspection of an airframe that is registered. */
  public static Inspected of(UUID id, long airframe, List<Seen> seen) {
    return new Inspected(id, airframe, null, seen);
  }

  /** An inspection of an airframe to register. */
  public static Inspected of(UUID id, NewAirframe fresh, List<Seen> seen) {
    return new Inspected(id, null, fresh, seen);
  }
}
