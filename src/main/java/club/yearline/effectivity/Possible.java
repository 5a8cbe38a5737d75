package club.yearline.effectivity;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An offering that is possible at a position.
 *
 * @param change the change that brought it; null for "nothing recorded"
 * @param cutIn where that change takes effect in the variant
 * @param open whether it is possible only because the records do not tell where it cut in
 */
public record Possible(@Nullable Change change, @Nullable CutIn cutIn, boolean open) {

  static final Possible NOTHING_RECORDED = new Possible(null, null, false);

  /** Whether this stands for "nothing recorded". */
  public boolean isNothing() {
    return change == null;
  }

  /** The values offered; empty for "nothing recorded". */
  public List<Offered> offering() {
    return change == null ? List.of() : change.offering();
  }

  /** Whether the same values are offered in the same way, whichever change brought them. */
  boolean offersSame(Possible other) {
    return change == other.change || outcome().equals(other.outcome());
  }

  /** Whether the same change brought it. */
  boolean sameChange(Possible other) {
    return change == other.change || changeKey().equals(other.changeKey());
  }

  /** The change's key; empty for "nothing recorded". */
  String changeKey() {
    return change == null ? "" : change.key();
  }

  private List<String> outcome() {
    return offering().stream()
        .map(o -> o.canonicalValue() + " " + o.fit().code())
        .sorted()
        .toList();
  }
}
