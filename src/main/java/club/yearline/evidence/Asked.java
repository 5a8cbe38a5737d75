package club.yearline.evidence;

import club.yearline.effectivity.Serial;
import club.yearline.effectivity.SerialText;
import club.yearline.estimation.Bounds;
import club.yearline.estimation.CutInQuestion;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The bounds that a reader asks for, or those of the record.
 *
 * @param lo the lowest candidate as typed, or as recorded; empty where neither is there
 * @param hi the highest likewise
 * @param bounds the two as read; null where they cannot be
 * @param own whether the reader typed any
 * @param faults keys of messages that say what is wrong, by field
 */
record Asked(
    String lo, String hi, @Nullable Bounds bounds, boolean own, Map<String, String> faults) {

  static Asked of(CutInQuestion question, @Nullable String lo, @Nullable String hi) {
    String low = blankToNull(lo);
    String high = blankToNull(hi);
    Map<String, String> faults = new TreeMap<>();
    OptionalLong first = read(question, low, question.lowest(), "lo", faults);
    OptionalLong last = read(question, high, question.highest(), "hi", faults);
    Bounds bounds = null;
    if (first.isPresent() && last.isPresent()) {
      if (first.getAsLong() <= last.getAsLong()) {
        bounds = new Bounds(first.getAsLong(), last.getAsLong());
      } else {
        faults.put("hi", "evidence.fault.reversed");
      }
    }
    return new Asked(
        low == null ? shown(question, first) : low,
        high == null ? shown(question, last) : high,
        bounds,
        low != null || high != null,
        faults);
  }

  private static @Nullable String blankToNull(@Nullable String typed) {
    return typed == null || typed.isBlank() ? null : typed.strip();
  }

  private static OptionalLong read(
      CutInQuestion question,
      @Nullable String typed,
      OptionalLong recorded,
      String field,
      Map<String, String> faults) {
    if (typed == null) {
      if (recorded.isEmpty()) {
        faults.put(field, "evidence.fault.missing");
      }
      return recorded;
    }
    Optional<Serial> serial =
        typed.length() > SerialText.MAX_LENGTH ? Optional.empty() : question.series().read(typed);
    if (serial.isEmpty()) {
      faults.put(field, "evidence.fault.serial");
      return OptionalLong.empty();
    }
    return OptionalLong.of(serial.get().ordinal());
  }

  private static String shown(CutInQuestion question, OptionalLong ordinal) {
    return ordinal.isPresent() ? question.series().show(Serial.of(ordinal.getAsLong())) : "";
  }
}
