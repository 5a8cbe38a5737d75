package club.yearline.effectivity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;

/** The blocks of one series, of all its variants, in serial order. */
final class SeriesBlocks {

  private final List<Block> blocks;

  /** For each block, the highest end among it and those before it: where a walk back may stop. */
  private final List<Serial> reach = new ArrayList<>();

  SeriesBlocks(List<Block> blocks) {
    this.blocks = blocks.stream().sorted(Block.IN_SERIES).toList();
    Serial highest = Serial.of(0);
    for (Block block : this.blocks) {
      Serial end = block.endless() ? Serial.of(Serial.MAX_ORDINAL + 1) : block.end();
      highest = highest.isBelow(end) ? end : highest;
      reach.add(highest);
    }
  }

  List<Block> all() {
    return blocks;
  }

  /** The blocks that hold a serial; more than one only where they are intermixed. */
  List<Block> holding(Serial serial) {
    List<Block> found = new ArrayList<>(1);
    for (int i = floor(serial); i >= 0 && serial.isBelow(reach.get(i)); i--) {
      if (blocks.get(i).holds(serial)) {
        found.add(0, blocks.get(i));
      }
    }
    return found;
  }

  /** The nearest block that ends before a serial. */
  Optional<Block> below(Serial serial) {
    return blocks.stream()
        .filter(b -> !b.endless() && !serial.isBelow(b.end()))
        .max((a, b) -> a.end().compareTo(b.end()));
  }

  /** The nearest block that begins after a serial. */
  Optional<Block> above(Serial serial) {
    int next = floor(serial) + 1;
    return next < blocks.size() ? Optional.of(blocks.get(next)) : Optional.empty();
  }

  /**
   * The number of airframes in {@code [from, to)} that belong to the wanted blocks; a serial shared
   * by several blocks counts in equal parts in each. Ordinals count by their plain serial, and in a
   * block that begins with a letter, that first one counts too.
   */
  double airframes(Serial from, Serial to, Predicate<Block> wanted) {
    List<Block> touched = touched(from, to);
    TreeSet<Long> cuts = new TreeSet<>(List.of(from.plainFloor(), to.plainFloor()));
    for (Block block : touched) {
      cuts.add(block.first().plainFloor());
      cuts.add(block.end().plainFloor());
    }
    double sum = 0;
    for (Long cut : cuts.subSet(from.plainFloor(), to.plainFloor())) {
      Long next = cuts.higher(cut);
      sum += next == null ? 0 : (next - cut) * share(touched, cut, wanted);
    }
    for (Block block : touched) {
      Serial first = block.first();
      boolean lettered = first.suffix() != Serial.NO_SUFFIX && !first.isBelow(from);
      sum += lettered && wanted.test(block) ? 1.0 / holding(first).size() : 0;
    }
    return sum;
  }

  private List<Block> touched(Serial from, Serial to) {
    List<Block> touched = new ArrayList<>();
    for (int i = floor(to); i >= 0 && from.isBelow(reach.get(i)); i--) {
      Block block = blocks.get(i);
      if (from.isBelow(block.end()) && block.first().isBelow(to)) {
        touched.add(block);
      }
    }
    return touched;
  }

  private static double share(List<Block> touched, long ordinal, Predicate<Block> wanted) {
    int all = 0;
    int ours = 0;
    for (Block block : touched) {
      if (block.first().plainFloor() <= ordinal && ordinal < block.end().plainFloor()) {
        all++;
        ours += wanted.test(block) ? 1 : 0;
      }
    }
    return all == 0 ? 0 : (double) ours / all;
  }

  /** Index of the last block that begins at or before the serial; -1 for none. */
  private int floor(Serial serial) {
    int low = 0;
    int high = blocks.size() - 1;
    while (low <= high) {
      int middle = (low + high) >>> 1;
      if (serial.isBelow(blocks.get(middle).first())) {
        high = middle - 1;
      } else {
        low = middle + 1;
      }
    }
    return high;
  }
}
