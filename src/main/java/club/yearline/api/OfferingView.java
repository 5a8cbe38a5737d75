package club.yearline.api;

import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Possible;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An offering that is possible: the change that brought it (null for "nothing recorded") and its
 * values.
 */
record OfferingView(
    @JsonInclude(JsonInclude.Include.ALWAYS) @Nullable String change,
    List<ValueView> values,
    @Nullable WindowView window) {

  static OfferingView of(Feature feature, Possible possible) {
    return new OfferingView(
        possible.change() == null ? null : possible.change().key(),
        AnswerView.each(possible.offering(), o -> ValueView.of(feature, o)),
        WindowView.of(possible.cutIn()));
  }
}
