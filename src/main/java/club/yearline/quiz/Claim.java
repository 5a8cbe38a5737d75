package club.yearline.quiz;

import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Position;
import java.util.List;
import java.util.stream.IntStream;

/** What an option of a question says, in a form that the engine can judge. */
sealed interface Claim {

  /** What the engine is asked to judge it. */
  List<Ask> asks();

  /** Every airframe of the position left the factory with the value, and none with another. */
  record Has(Position at, Feature feature, String value) implements Claim {
    @Override
    public List<Ask> asks() {
      return List.of(new Ask(at, feature));
    }
  }

  /** It was one value at the earlier position, and is another at the later. */
  record Became(Position before, Position after, Feature feature, String from, String to)
      implements Claim {
    @Override
    public List<Ask> asks() {
      return List.of(new Ask(before, feature), new Ask(after, feature));
    }
  }

  /** The things came new in this order, each in a later year than the one before. */
  record InOrder(List<Arrival> arrivals) implements Claim {

    public InOrder {
      arrivals = List.copyOf(arrivals);
    }

    @Override
    public List<Ask> asks() {
      return arrivals.stream().map(a -> new Ask(a.year(), a.feature())).toList();
    }
  }

  /** A value that some airframe of a year has, and none of any year before. */
  record Arrival(Position year, Feature feature, String value) {}

  /** All places but one have the same value, and that one has another. */
  record Odd(Feature feature, List<Position> places, int odd) implements Claim {

    public Odd {
      places = List.copyOf(places);
    }

    /** The place that does not belong. */
    Position place() {
      return places.get(odd);
    }

    /** The same places, each claimed to be the odd one. */
    static List<Claim> each(Feature feature, List<Position> places) {
      return IntStream.range(0, places.size())
          .<Claim>mapToObj(i -> new Odd(feature, places, i))
          .toList();
    }

    @Override
    public List<Ask> asks() {
      return places.stream().map(p -> new Ask(p, feature)).toList();
    }
  }

  /** The records settle on the value. */
  record Settles(Position at, Feature feature, String value) implements Claim {
    @Override
    public List<Ask> asks() {
      return List.of(new Ask(at, feature));
    }
  }

  /** The position lies in a transition: old and new both left the factory. */
  record Mixes(Position at, Feature feature) implements Claim {
    @Override
    public List<Ask> asks() {
      return List.of(new Ask(at, feature));
    }
  }

  /** The records rule the value out. */
  record Lacks(Position at, Feature feature, String value) implements Claim {
    @Override
    public List<Ask> asks() {
      return List.of(new Ask(at, feature));
    }
  }
}
