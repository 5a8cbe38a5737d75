package club.yearline.expected;

import club.yearline.catalog.Wording;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Position;
import club.yearline.web.Phrases;
import org.jspecify.annotations.Nullable;

/** Tells somebody who stands in a change's window why old or new are both possible. */
final class Windows {

  private final Wording wording;
  private final Phrases phrases;

  Windows(Wording wording, Phrases phrases) {
    this.wording = wording;
    this.phrases = phrases;
  }

  /** Where old and new left the factory side by side, missing ends said as such. */
  String transition(CutIn cutIn) {
    String first = end(cutIn.firstYear(), cutIn.firstSerial());
    String settled = end(cutIn.settledYear(), cutIn.settledSerial());
    if (first == null) {
      return phrases.of("expected.transition.no-first", settled);
    }
    return settled == null
        ? phrases.of("expected.transition.no-settled", first)
        : phrases.of("expected.transition.both", first, settled);
  }

  /** Why the records do not tell on which side of the window a position lies. */
  String open(CutIn cutIn, Position position) {
    boolean bySerial = cutIn.firstSerial() != null || cutIn.settledSerial() != null;
    String reason = position.year() == null ? "year" : "series";
    if (bySerial && position.serial() == null) {
      reason = "serial";
    }
    return phrases.of("expected.open." + reason, wording.cutIn(cutIn));
  }

  private @Nullable String end(@Nullable Integer year, @Nullable String serial) {
    if (serial == null) {
      return year == null ? null : year.toString();
    }
    return year == null ? serial : phrases.of("expected.end", serial, year);
  }
}
