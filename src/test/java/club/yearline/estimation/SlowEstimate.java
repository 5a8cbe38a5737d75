package club.yearline.estimation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.function.LongPredicate;

/**
 * Domain section 10 read word for word: every candidate and every pair of candidates, one by one,
 * in decimal numbers of fifty digits. No logarithms, no cells, no running sums.
 */
final class SlowEstimate {

  private static final MathContext DIGITS = new MathContext(50);
  private static final BigDecimal HALF = new BigDecimal("0.5");

  private final Bounds candidates;
  private final List<Sighting> sightings;
  private final TreeMap<Long, BigDecimal> clean = new TreeMap<>();
  private final List<Window> windows = new ArrayList<>();
  private final BigDecimal cleanSum;
  private final BigDecimal windowSum;

  /** A window and the chance of all that was seen, if it was so. */
  private record Window(long first, long settled, BigDecimal chance) {}

  private interface Where {
    /** 0 before, 1 inside, 2 from the end on. */
    int of(long ordinal);
  }

  SlowEstimate(Bounds candidates, List<Sighting> sightings) {
    this.candidates = candidates;
    this.sightings = sightings;
    BigDecimal sum = BigDecimal.ZERO;
    for (long c = candidates.first(); c <= candidates.last(); c++) {
      long cut = c;
      BigDecimal chance = chance(o -> o < cut ? 0 : 2);
      clean.put(c, chance);
      sum = sum.add(chance, DIGITS);
    }
    cleanSum = sum;
    BigDecimal ofWindows = BigDecimal.ZERO;
    for (long f = candidates.first(); f <= candidates.last(); f++) {
      for (long s = f + 1; s <= candidates.last(); s++) {
        long first = f;
        long settled = s;
        BigDecimal chance = chance(o -> o < first ? 0 : o < settled ? 1 : 2);
        windows.add(new Window(f, s, chance));
        ofWindows = ofWindows.add(chance, DIGITS);
      }
    }
    windowSum = ofWindows;
  }

  private BigDecimal chance(Where where) {
    BigDecimal product = BigDecimal.ONE;
    for (Sighting sighting : sightings) {
      int place = where.of(sighting.ordinal());
      BigDecimal exchanged = BigDecimal.valueOf(sighting.exchange()).multiply(HALF);
      BigDecimal factor =
          place == 1
              ? HALF
              : (place == 2) == sighting.isNew() ? BigDecimal.ONE.subtract(exchanged) : exchanged;
      product = product.multiply(factor, DIGITS);
    }
    return product;
  }

  double bayesFactor() {
    return mean(cleanSum, clean.size())
        .divide(mean(windowSum, windows.size()), DIGITS)
        .doubleValue();
  }

  private static BigDecimal mean(BigDecimal sum, int count) {
    return sum.divide(BigDecimal.valueOf(count), DIGITS);
  }

  double cleanChance() {
    if (windows.isEmpty()) {
      return 1;
    }
    BigDecimal ofClean = mean(cleanSum, clean.size());
    return ofClean
        .divide(ofClean.add(mean(windowSum, windows.size()), DIGITS), DIGITS)
        .doubleValue();
  }

  private double ofClean(LongPredicate wanted) {
    BigDecimal sum = BigDecimal.ZERO;
    for (var one : clean.entrySet()) {
      sum = wanted.test(one.getKey()) ? sum.add(one.getValue(), DIGITS) : sum;
    }
    return sum.divide(cleanSum, DIGITS).doubleValue();
  }

  private interface Wanted {
    boolean test(Window window);
  }

  private double ofWindows(Wanted wanted) {
    if (windows.isEmpty()) {
      return 0;
    }
    BigDecimal sum = BigDecimal.ZERO;
    for (Window one : windows) {
      sum = wanted.test(one) ? sum.add(one.chance, DIGITS) : sum;
    }
    return sum.divide(windowSum, DIGITS).doubleValue();
  }

  /** The chance that an airframe left the factory with the new one. */
  double growth(long o) {
    return cleanChance() * ofClean(c -> c <= o)
        + (1 - cleanChance())
            * (ofWindows(w -> w.settled <= o) + ofWindows(w -> w.first <= o && o < w.settled) / 2);
  }

  /** The chance that what was seen on an airframe contradicts where it stands. */
  double contradiction(Sighting sighting) {
    long o = sighting.ordinal();
    return sighting.isNew()
        ? cleanChance() * ofClean(c -> o < c) + (1 - cleanChance()) * ofWindows(w -> o < w.first)
        : cleanChance() * ofClean(c -> c <= o)
            + (1 - cleanChance()) * ofWindows(w -> w.settled <= o);
  }

  List<Bounds> densest() {
    List<Bounds> runs = runs();
    BigDecimal greatest = clean.values().stream().max(Comparator.naturalOrder()).orElseThrow();
    return runs.stream().filter(r -> at(r).compareTo(greatest) == 0).toList();
  }

  List<Bounds> credible() {
    List<Bounds> order = new ArrayList<>(runs());
    order.sort(
        Comparator.comparing(this::at)
            .reversed()
            .thenComparing(Comparator.comparing(Bounds::first)));
    List<Long> chosen = new ArrayList<>();
    BigDecimal held = BigDecimal.ZERO;
    BigDecimal wanted = cleanSum.multiply(new BigDecimal("0.95"));
    for (Bounds run : order) {
      if (held.compareTo(wanted) >= 0) {
        break;
      }
      held = held.add(at(run).multiply(BigDecimal.valueOf(run.size())), DIGITS);
      for (long c = run.first(); c <= run.last(); c++) {
        chosen.add(c);
      }
    }
    return ranges(chosen.stream().sorted().toList());
  }

  /** The longest stretches of equal density. */
  private List<Bounds> runs() {
    List<Bounds> runs = new ArrayList<>();
    long from = candidates.first();
    for (long c = candidates.first(); c <= candidates.last(); c++) {
      if (c == candidates.last() || clean.get(c + 1).compareTo(clean.get(c)) != 0) {
        runs.add(new Bounds(from, c));
        from = c + 1;
      }
    }
    return runs;
  }

  private BigDecimal at(Bounds run) {
    return clean.get(run.first());
  }

  private static List<Bounds> ranges(List<Long> ordinals) {
    List<Bounds> ranges = new ArrayList<>();
    for (long ordinal : ordinals) {
      int last = ranges.size() - 1;
      if (last >= 0 && ranges.get(last).last() == ordinal - 1) {
        ranges.set(last, new Bounds(ranges.get(last).first(), ordinal));
      } else {
        ranges.add(new Bounds(ordinal, ordinal));
      }
    }
    return ranges;
  }

  /** Around the lowest pair of greatest chance: its firsts with any second, and the other way. */
  WindowStretches window() {
    BigDecimal greatest =
        windows.stream().map(Window::chance).max(Comparator.naturalOrder()).orElseThrow();
    List<Window> best = windows.stream().filter(w -> w.chance.compareTo(greatest) == 0).toList();
    Window lowest = best.get(0);
    List<Window> joined = new ArrayList<>(List.of(lowest));
    for (boolean grown = true; grown; ) {
      grown = false;
      for (Window one : best) {
        if (!joined.contains(one) && joined.stream().anyMatch(w -> touch(w, one))) {
          joined.add(one);
          grown = true;
        }
      }
    }
    return new WindowStretches(
        hull(joined.stream().map(Window::first).sorted().toList()),
        hull(joined.stream().map(Window::settled).sorted().toList()));
  }

  private static boolean touch(Window one, Window other) {
    return Math.abs(one.first - other.first) + Math.abs(one.settled - other.settled) == 1;
  }

  private static Bounds hull(List<Long> sorted) {
    return new Bounds(sorted.get(0), sorted.get(sorted.size() - 1));
  }
}
