package club.yearline.fleet;

import club.yearline.effectivity.Position;
import club.yearline.web.Choice;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a form about an airframe names.
 *
 * @param position what it is; null where that is not clear
 * @param faults what is wrong, by field
 * @param advice what to do about it; null where nothing is
 * @param choices what may be meant, where it may be several
 */
record Identified(
    @Nullable Position position,
    Map<String, String> faults,
    @Nullable String advice,
    List<Choice> choices) {

  static Identified as(Position position) {
    return new Identified(position, Map.of(), null, List.of());
  }
}
