package club.yearline.evidence;

import club.yearline.effectivity.Serial;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.VariantModel;
import club.yearline.estimation.Bounds;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The serials of a variant in tens, from the lowest on: where an owner did not agree that a serial
 * is shown, no more is told of the airframe than in which ten it stands, and what is computed knows
 * no more either. What is left over at the end belongs to the last ten.
 */
final class Bands {

  /** How many airframes of the variant share a band, at least. */
  static final int SIZE = 10;

  /** What the variant's blocks hold, by ordinal, without overlaps. */
  private final List<Bounds> held = new ArrayList<>();

  private final long count;

  private Bands(List<Bounds> blocks) {
    blocks.stream().sorted(Comparator.comparingLong(Bounds::first)).forEach(this::hold);
    count = held.stream().mapToLong(Bounds::size).sum();
  }

  /** The bands of a variant's serials in a series. */
  static Bands of(VariantModel model, Series series) {
    long end = model.ordinals(series, null).map(s -> s.end()).orElse(1L);
    return new Bands(
        model.blocks().stream()
            .filter(b -> b.series().equals(series.key()))
            .map(b -> held(b, series, end))
            .toList());
  }

  private static Bounds held(SerialBlock block, Series series, long end) {
    long first = series.read(block.firstSerial()).map(Serial::ordinal).orElseThrow();
    long last =
        block.lastSerial() == null
            ? end - 1
            : series.read(block.lastSerial()).map(Serial::ordinal).orElseThrow();
    return new Bounds(first, Math.max(first, last));
  }

  private void hold(Bounds block) {
    Bounds last = held.isEmpty() ? null : held.get(held.size() - 1);
    if (last != null && block.first() <= last.last() + 1) {
      held.set(held.size() - 1, new Bounds(last.first(), Math.max(last.last(), block.last())));
    } else {
      held.add(block);
    }
  }

  /**
   * The band of an ordinal; one in no block belongs to the band next to it, which then reaches it.
   */
  Bounds around(long ordinal) {
    if (count == 0) {
      return new Bounds(0, Serial.MAX_ORDINAL);
    }
    long bands = Math.max(1, count / SIZE);
    long band = Math.min(Math.min(rank(ordinal), count - 1) / SIZE, bands - 1);
    long first = at(band * SIZE);
    long last = band == bands - 1 ? at(count - 1) : at((band + 1) * SIZE - 1);
    if (held.stream().anyMatch(b -> b.holds(ordinal))) {
      return new Bounds(first, last);
    }
    return new Bounds(Math.min(first, tens(ordinal)), Math.max(last, tens(ordinal) + SIZE - 1));
  }

  private static long tens(long ordinal) {
    return ordinal / SIZE * SIZE;
  }

  /** How many of the variant's serials lie below an ordinal. */
  private long rank(long ordinal) {
    long below = 0;
    for (Bounds block : held) {
      if (ordinal > block.last()) {
        below += block.size();
      } else {
        return below + Math.max(0, ordinal - block.first());
      }
    }
    return below;
  }

  /** The ordinal of the variant's serial that stands so far from the lowest. */
  private long at(long rank) {
    long left = rank;
    for (Bounds block : held) {
      if (left < block.size()) {
        return block.first() + left;
      }
      left -= block.size();
    }
    return held.get(held.size() - 1).last();
  }
}
