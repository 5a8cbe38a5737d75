package club.yearline.compare;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Possible;
import club.yearline.effectivity.Values;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What is recorded of a figure for the airframes of one stretch. Where several values left the
 * factory, in a transition or as options, all of them count: the figure is then a range.
 *
 * @param figure the figure
 * @param values what may have left the factory, each once, oldest first
 * @param missing why it cannot be used; null where it can
 */
record Recorded(Figure figure, List<Value> values, @Nullable Missing missing) {

  Recorded {
    values = List.copyOf(values);
  }

  /**
   * One value.
   *
   * @param amount in the unit of the record
   * @param fit standard or option
   */
  record Value(Amount amount, Fit fit) {}

  static Recorded missing(Figure figure, Missing why) {
    return new Recorded(figure, List.of(), why);
  }

  /** What an answer that does not split says. */
  static Recorded of(Figure figure, Answer answer) {
    String unit = answer.feature().unit();
    Optional<Scale> scale = unit == null ? Optional.empty() : Scale.of(unit);
    if (!answer.feature().isNumber() || scale.filter(figure.scale()::measuresLike).isEmpty()) {
      return missing(figure, Missing.WRONG_UNIT);
    }
    List<Value> values = new ArrayList<>();
    boolean partly = false;
    for (Possible possible : answer.possible()) {
      partly |= possible.isNothing();
      possible.offering().forEach(o -> add(values, o, scale.get()));
    }
    return new Recorded(figure, values, fault(values, partly));
  }

  private static void add(List<Value> values, Offered offered, Scale scale) {
    Optional<BigDecimal> number = Values.number(offered.value());
    if (number.isPresent()
        && values.stream().noneMatch(v -> v.amount.value().compareTo(number.get()) == 0)) {
      values.add(new Value(Amount.recorded(number.get(), scale), offered.fit()));
    }
  }

  private static @Nullable Missing fault(List<Value> values, boolean partly) {
    if (values.isEmpty()) {
      return Missing.UNRECORDED;
    }
    if (values.stream().anyMatch(v -> v.amount.value().signum() <= 0)) {
      return Missing.NOT_POSITIVE;
    }
    return partly ? Missing.PARTLY : null;
  }

  /** The range in the unit of the arithmetic; empty where the figure cannot be used. */
  Optional<Interval> usable() {
    return missing == null ? range().map(r -> r.in(figure.scale())) : Optional.empty();
  }

  /** The range of what is recorded, usable or not, in the unit of the record. */
  Optional<Interval> range() {
    return values.stream().map(v -> Interval.of(v.amount)).reduce(Interval::around);
  }

  /** Whether the other says the same. */
  boolean saysSame(Recorded other) {
    return missing == other.missing && values.equals(other.values);
  }
}
