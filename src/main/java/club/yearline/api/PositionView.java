package club.yearline.api;

import club.yearline.effectivity.Position;
import com.fasterxml.jackson.annotation.JsonInclude;
import org.jspecify.annotations.Nullable;

/** A position as the API shows it. */
@JsonInclude(JsonInclude.Include.ALWAYS)
record PositionView(
    String variant, @Nullable Integer year, @Nullable String series, @Nullable String serial) {

  static PositionView of(Position position) {
    return new PositionView(
        position.variant().key(),
        position.year(),
        position.series() == null ? null : position.series().key(),
        position.serialText());
  }
}
