package club.yearline.fleet;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Possible;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.State;
import club.yearline.effectivity.Values;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** How a value seen on an airframe stands to what it should have. */
enum Match {
  /** In every offering that is possible. */
  AS_BUILT("is-settled"),
  /** In some of them. */
  POSSIBLE("is-transition"),
  /** In none, but recorded as a retrofit for the airframe. */
  RETROFIT("is-retrofit"),
  /** In none, and nothing explains it. */
  DIFFERS("is-differing"),
  /** The catalogue does not say what it should be. */
  UNRECORDED("is-unrecorded");

  private final String shape;

  Match(String shape) {
    this.shape = shape;
  }

  /** The classes of its mark. */
  String mark() {
    return "mark " + shape;
  }

  /** The word used in message keys. */
  String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Whether the airframe differs from how it was built. */
  boolean isDifference() {
    return this == RETROFIT || this == DIFFERS;
  }

  /**
   * Compares a value with an answer.
   *
   * @param answer what is expected; null where the feature does not belong to the variant
   */
  static Match of(@Nullable Answer answer, Position position, String value) {
    if (answer == null) {
      return UNRECORDED;
    }
    List<Possible> possible =
        answer.state() == State.SPLITS
            ? answer.stretches().stream().flatMap(s -> s.answer().possible().stream()).toList()
            : answer.possible();
    String seen = Values.canonical(value);
    long offering = possible.stream().filter(p -> offers(p, seen)).count();
    if (offering > 0) {
      return offering == possible.size() ? AS_BUILT : POSSIBLE;
    }
    if (answer.retrofits().stream().anyMatch(r -> explains(r, position, seen))) {
      return RETROFIT;
    }
    return mayBeUnrecorded(answer, possible) ? UNRECORDED : DIFFERS;
  }

  private static boolean offers(Possible possible, String value) {
    return possible.offering().stream().map(Offered::canonicalValue).anyMatch(value::equals);
  }

  private static boolean explains(Retrofit retrofit, Position position, String value) {
    return Values.canonical(retrofit.value()).equals(value) && retrofit.fits(position);
  }

  private static boolean mayBeUnrecorded(Answer answer, List<Possible> possible) {
    return possible.isEmpty()
        || possible.stream().anyMatch(Possible::isNothing)
        || answer.stretches().stream().anyMatch(s -> s.answer().state() == State.UNRECORDED);
  }
}
