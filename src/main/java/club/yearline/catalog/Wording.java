package club.yearline.catalog;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Possible;
import club.yearline.effectivity.State;
import club.yearline.effectivity.Stretch;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** Says values, offerings, answers and cut-ins in words, the same on every page. */
@Component
public class Wording {

  private static final BigDecimal HUNDRED = new BigDecimal(100);

  private final MessageSource messages;

  /** Takes its words from the bundle {@code messages/wording}. */
  public Wording(MessageSource messages) {
    this.messages = messages;
  }

  /** A value as a person says it: its label, or the number as recorded with its unit. */
  public String value(Feature feature, String value) {
    return feature.isNumber()
        ? value + unit(feature)
        : feature.value(value).map(FeatureValue::label).orElse(value);
  }

  /** A number's unit as it follows the number; what is counted has none. */
  private static String unit(Feature feature) {
    String unit = feature.unit();
    if (unit == null || unit.equals("count")) {
      return "";
    }
    return unit.equals("deg") ? "°" : "\u00a0" + unit;
  }

  /** A value with the share of airframes that left with it, where that is recorded. */
  public String offered(Feature feature, Offered offered) {
    String value = value(feature, offered.value());
    return offered.takeRate() == null ? value : text("taken", value, percent(offered.takeRate()));
  }

  /** What was available new: the standard values, then the options. */
  public String offering(Feature feature, List<Offered> offering) {
    String standard = joined(feature, offering, Fit.STANDARD);
    String option = joined(feature, offering, Fit.OPTION);
    if (option.isEmpty()) {
      return standard;
    }
    return standard.isEmpty() ? text("options", option) : text("both", standard, option);
  }

  /** What one possibility means, "nothing recorded" included. */
  public String possible(Feature feature, Possible possible) {
    return possible.isNothing() ? text("nothing") : offering(feature, possible.offering());
  }

  /** The whole answer in one line; the state itself is told by its mark. */
  public String answer(Answer answer) {
    if (answer.state() == State.SPLITS) {
      return answer.stretches().stream()
          .map(s -> text("stretch", serials(s), answer(s.answer())))
          .collect(Collectors.joining("; "));
    }
    if (answer.state() == State.UNRECORDED) {
      return text("unrecorded");
    }
    return answer.possible().stream()
        .map(p -> possible(answer.feature(), p))
        .collect(Collectors.joining(text("or")));
  }

  /** The serials of a stretch, as stamped. */
  public String serials(Stretch stretch) {
    return range(stretch.firstText(), stretch.lastText());
  }

  /** Years from the first to the last; null: still. */
  public String years(int first, @Nullable Integer last) {
    return last == null ? text("onwards", first) : range("" + first, "" + last);
  }

  /** From the first to the last, or the one that is both. */
  public String range(String first, String last) {
    return first.equals(last) ? first : text("range", first, last);
  }

  /** A number of airframes; serials shared by intermixed blocks count in parts. */
  public String airframes(double count) {
    BigDecimal rounded = BigDecimal.valueOf(count).setScale(1, RoundingMode.HALF_UP);
    String shown = rounded.stripTrailingZeros().toPlainString();
    return text(shown.equals("1") ? "airframe" : "airframes", shown);
  }

  /** Where a change takes effect, on every axis that is recorded, missing ends said as such. */
  public String cutIn(CutIn cutIn) {
    if (cutIn.atStart()) {
      return text("start");
    }
    String first = end(cutIn.firstYear(), cutIn.firstSerial());
    String settled = end(cutIn.settledYear(), cutIn.settledSerial());
    if (settled.isEmpty()) {
      return text("first-only", first);
    }
    if (first.isEmpty()) {
      return text("settled-only", settled);
    }
    if (first.equals(settled)) {
      return text("from", first);
    }
    return mixedForOneYear(cutIn) ? text("mixed", first, settled) : text("window", first, settled);
  }

  private static boolean mixedForOneYear(CutIn cutIn) {
    return cutIn.firstYear() != null
        && cutIn.firstSerial() == null
        && cutIn.settledSerial() == null
        && Objects.equals(cutIn.settledYear(), cutIn.firstYear() + 1);
  }

  private String end(@Nullable Integer year, @Nullable String serial) {
    if (serial == null) {
      return year == null ? "" : "" + year;
    }
    return year == null ? text("serial", serial) : text("year-and-serial", "" + year, serial);
  }

  private String joined(Feature feature, List<Offered> offering, Fit fit) {
    return offering.stream()
        .filter(o -> o.fit() == fit)
        .map(o -> offered(feature, o))
        .collect(Collectors.joining(text(fit == Fit.STANDARD ? "or" : "and")));
  }

  private static String percent(BigDecimal share) {
    return share.multiply(HUNDRED).stripTrailingZeros().toPlainString();
  }

  private String text(String key, Object... arguments) {
    // Years reach messages as text, so that 1966 is not printed as 1,966.
    Object[] texts = new Object[arguments.length];
    for (int i = 0; i < texts.length; i++) {
      texts[i] = String.valueOf(arguments[i]);
    }
    return messages.getMessage("wording." + key, texts, LocaleContextHolder.getLocale());
  }
}
