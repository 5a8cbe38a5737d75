package club.yearline.compare;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The figures of airframes that left the factory alike, as far as figures go: all of a variant and
 * year, or a stretch of its serials where the year splits. Figures that changed together therefore
 * stay together in all arithmetic.
 *
 * @param serials the stretch, as stamped; null for all
 * @param figures by figure, all of them
 * @param fuelDensity of the family
 */
record Build(@Nullable Serials serials, Map<Figure, Recorded> figures, Amount fuelDensity) {

  Build {
    figures = Map.copyOf(figures);
  }

  /** A stretch of serials, as stamped. */
  record Serials(String first, String last) {}

  Recorded recorded(Figure figure) {
    Recorded recorded = figures.get(figure);
    if (recorded == null) {
      throw new IllegalArgumentException("A build tells of every figure, but not of " + figure);
    }
    return recorded;
  }

  /** The figure's range; empty where it cannot be used. */
  Optional<Interval> figure(Figure figure) {
    return recorded(figure).usable();
  }

  /** Those of the given figures that cannot be used. */
  List<Figure> missing(List<Figure> needed) {
    return needed.stream().filter(f -> recorded(f).missing() != null).toList();
  }

  /** Whether both say the same of the given figures. */
  boolean saysSame(Build other, List<Figure> of) {
    return of.stream().allMatch(f -> recorded(f).saysSame(other.recorded(f)));
  }
}
