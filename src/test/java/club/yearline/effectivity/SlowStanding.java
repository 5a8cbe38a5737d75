package club.yearline.effectivity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** How changes stand to positions and in which order they come, slowly (section 4). */
final class SlowStanding {

  private static final int BELOW = -1;
  private static final int UNDECIDED = 0;
  private static final int ABOVE = 1;

  private final Records records;
  private final SlowSerials serials;
  private final Map<String, TreeSet<Integer>> walked = new HashMap<>();
  private final Map<String, Map<String, Map<String, Optional<Integer>>>> yearsOfSerials =
      new HashMap<>();

  SlowStanding(Records records, SlowSerials serials) {
    this.records = records;
    this.serials = serials;
  }

  /** A position; the serial and its series may be missing, or the year. */
  record Place(
      String variant, @Nullable Integer year, @Nullable String series, @Nullable Serial serial) {}

  /** Every year of the variant's runs. */
  TreeSet<Integer> years(String variant) {
    return walked.computeIfAbsent(variant, this::walk);
  }

  private TreeSet<Integer> walk(String variant) {
    TreeSet<Integer> years = new TreeSet<>();
    for (ProductionRun run : variant(variant).runs()) {
      int last = run.lastYear() == null ? latestNamed(variant) : run.lastYear();
      for (int year = run.firstYear(); year <= last; year++) {
        years.add(year);
      }
    }
    return years;
  }

  private Variant variant(String key) {
    return records.variants().stream().filter(v -> v.key().equals(key)).findFirst().orElseThrow();
  }

  private int latestNamed(String variant) {
    List<@Nullable Integer> named = new ArrayList<>();
    for (ProductionRun run : variant(variant).runs()) {
      named.add(run.firstYear());
      named.add(run.lastYear());
    }
    for (SoldName name : variant(variant).names()) {
      named.add(name.firstYear());
      named.add(name.lastYear());
    }
    serials.blocksOfVariant(variant).forEach(b -> named.add(b.year()));
    for (Retrofit retrofit : records.retrofits()) {
      if (retrofit.variant().equals(variant)) {
        named.add(retrofit.firstYear());
        named.add(retrofit.lastYear());
      }
    }
    for (Change change : records.changes()) {
      change.cutIn(variant).ifPresent(c -> named.add(c.firstYear()));
      change.cutIn(variant).ifPresent(c -> named.add(c.settledYear()));
    }
    return named.stream().filter(y -> y != null).mapToInt(y -> y).max().orElseThrow();
  }

  Standing of(CutIn cutIn, Place place, @Nullable Standing preceding) {
    if (cutIn.atStart()) {
      return Standing.AFTER;
    }
    boolean hasFirst = cutIn.firstYear() != null || cutIn.firstSerial() != null;
    boolean hasSettled = cutIn.settledYear() != null || cutIn.settledSerial() != null;
    int first = hasFirst ? side(place, cutIn, cutIn.firstYear(), cutIn.firstSerial()) : ABOVE;
    int settled =
        hasSettled ? side(place, cutIn, cutIn.settledYear(), cutIn.settledSerial()) : BELOW;
    if (settled == ABOVE) {
      return Standing.AFTER;
    }
    if (first == BELOW) {
      return Standing.BEFORE;
    }
    if (!hasFirst && preceding == Standing.BEFORE) {
      return Standing.BEFORE;
    }
    return first == UNDECIDED || settled == UNDECIDED ? Standing.OPEN : Standing.INSIDE;
  }

  private int side(Place place, CutIn cutIn, @Nullable Integer year, @Nullable String serial) {
    if (serial != null && place.serial() != null && cutIn.series().equals(place.series())) {
      Serial end = serials.recorded(cutIn.series(), serial);
      return SlowSerials.order(place.serial(), end) < 0 ? BELOW : ABOVE;
    }
    if (place.year() != null) {
      return sideOfYear(place.year(), place.variant(), cutIn, year, serial);
    }
    TreeSet<Integer> sides = new TreeSet<>();
    for (int each : years(place.variant())) {
      sides.add(sideOfYear(each, place.variant(), cutIn, year, serial));
    }
    return sides.size() == 1 ? sides.first() : UNDECIDED;
  }

  private int sideOfYear(
      int asked, String variant, CutIn cutIn, @Nullable Integer year, @Nullable String serial) {
    if (year != null) {
      return asked < year ? BELOW : ABOVE;
    }
    Integer blockYear = yearOf(variant, cutIn.series(), serial);
    return blockYear == null ? UNDECIDED : Integer.compare(asked, blockYear);
  }

  /** The year of the block that holds a serial, or else of the next above. */
  private @Nullable Integer yearOf(String variant, String series, String text) {
    return yearsOfSerials
        .computeIfAbsent(variant, v -> new HashMap<>())
        .computeIfAbsent(series, s -> new HashMap<>())
        .computeIfAbsent(text, t -> Optional.ofNullable(find(variant, series, t)))
        .orElse(null);
  }

  private @Nullable Integer find(String variant, String series, String text) {
    Serial serial = serials.recorded(series, text);
    List<SerialBlock> dated =
        serials.blocksOfVariant(variant).stream()
            .filter(b -> b.series().equals(series) && b.year() != null)
            .sorted(
                Comparator.comparing(serials::first, SlowSerials::order)
                    .thenComparing(SerialBlock::year)
                    .thenComparing(SerialBlock::key))
            .toList();
    for (SerialBlock block : dated) {
      if (serials.holds(block, serial)) {
        return block.year();
      }
    }
    for (SerialBlock block : dated) {
      if (SlowSerials.order(serials.first(block), serial) > 0) {
        return block.year();
      }
    }
    return null;
  }

  /** The changes of a feature that apply to a variant, in order. */
  List<Change> inOrder(String feature, String variant) {
    List<Change> ordered = new ArrayList<>();
    for (Change change : records.changes()) {
      if (change.feature().equals(feature) && change.cutIn(variant).isPresent()) {
        int place = 0;
        while (place < ordered.size() && !precedes(change, ordered.get(place), variant)) {
          place++;
        }
        ordered.add(place, change);
      }
    }
    return ordered;
  }

  private boolean precedes(Change one, Change other, String variant) {
    CutIn a = one.cutIn(variant).orElseThrow();
    CutIn b = other.cutIn(variant).orElseThrow();
    int[] compared = {
      Boolean.compare(b.atStart(), a.atStart()),
      Long.compare(rankYear(a), rankYear(b)),
      Boolean.compare(hasSerial(a), hasSerial(b)),
      hasSerial(a) && hasSerial(b) ? a.series().compareTo(b.series()) : 0,
      orMissing(rankSerial(a), rankSerial(b)),
      Integer.compare(orMissing(a.firstYear()), orMissing(b.firstYear())),
      orMissing(first(a), first(b)),
      one.key().compareTo(other.key())
    };
    for (int part : compared) {
      if (part != 0) {
        return part < 0;
      }
    }
    return false;
  }

  private long rankYear(CutIn cutIn) {
    if (cutIn.settledYear() != null) {
      return cutIn.settledYear();
    }
    Integer bySettled =
        cutIn.settledSerial() == null
            ? null
            : yearOf(cutIn.variant(), cutIn.series(), cutIn.settledSerial());
    if (bySettled != null) {
      return bySettled;
    }
    if (cutIn.firstYear() != null) {
      return cutIn.firstYear();
    }
    Integer byFirst =
        cutIn.firstSerial() == null
            ? null
            : yearOf(cutIn.variant(), cutIn.series(), cutIn.firstSerial());
    return byFirst == null ? Long.MAX_VALUE : byFirst;
  }

  private static boolean hasSerial(CutIn cutIn) {
    return cutIn.firstSerial() != null || cutIn.settledSerial() != null;
  }

  private @Nullable Serial rankSerial(CutIn cutIn) {
    return cutIn.settledSerial() == null
        ? first(cutIn)
        : serials.recorded(cutIn.series(), cutIn.settledSerial());
  }

  private @Nullable Serial first(CutIn cutIn) {
    return cutIn.firstSerial() == null
        ? null
        : serials.recorded(cutIn.series(), cutIn.firstSerial());
  }

  /** Missing before all. A letter after an ordinal counts here as it does in the series' order. */
  private static int orMissing(@Nullable Serial one, @Nullable Serial other) {
    if (one == null || other == null) {
      return Boolean.compare(one != null, other != null);
    }
    return SlowSerials.order(one, other);
  }

  private static int orMissing(@Nullable Integer year) {
    return year == null ? Integer.MIN_VALUE : year;
  }
}
