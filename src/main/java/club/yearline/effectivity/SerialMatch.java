package club.yearline.effectivity;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A series that a typed text fits, and where in it the serial lies.
 *
 * @param series the series
 * @param serial the serial read
 * @param blocks the blocks that hold it; several only where they are intermixed, none in a gap
 * @param below the nearest block that ends before it, where no block holds it
 * @param above the nearest block that begins after it, where no block holds it
 */
public record SerialMatch(
    Series series,
    Serial serial,
    List<SerialBlock> blocks,
    @Nullable SerialBlock below,
    @Nullable SerialBlock above) {

  public SerialMatch {
    blocks = List.copyOf(blocks);
  }

  /** The serial as stamped. */
  public String text() {
    return series.show(serial);
  }
}
