package club.yearline.api;

import club.yearline.effectivity.CutIn;
import com.fasterxml.jackson.annotation.JsonInclude;
import org.jspecify.annotations.Nullable;

/** Where a change cut in: from the first place it is seen to where all have it. */
@JsonInclude(JsonInclude.Include.ALWAYS)
record WindowView(
    @Nullable Integer firstYear,
    @Nullable Integer settledYear,
    @Nullable String series,
    @Nullable String firstSerial,
    @Nullable String settledSerial) {

  /** The window of a cut-in; null where it was there from the start. */
  static @Nullable WindowView of(@Nullable CutIn cutIn) {
    return cutIn == null || cutIn.atStart()
        ? null
        : new WindowView(
            cutIn.firstYear(),
            cutIn.settledYear(),
            cutIn.series(),
            cutIn.firstSerial(),
            cutIn.settledSerial());
  }
}
