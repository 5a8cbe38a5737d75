package club.yearline.compare;

import static club.yearline.testing.Sample.betweenYears;
import static club.yearline.testing.Sample.block;
import static club.yearline.testing.Sample.change;
import static club.yearline.testing.Sample.citation;
import static club.yearline.testing.Sample.family;
import static club.yearline.testing.Sample.fromSerial;
import static club.yearline.testing.Sample.number;
import static club.yearline.testing.Sample.series;
import static club.yearline.testing.Sample.source;
import static club.yearline.testing.Sample.variant;

import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Records;
import club.yearline.effectivity.Variant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * An invented catalogue for comparisons: la-2b of 1964 to 1967, whose gross and empty weight change
 * together at LT-0150 in 1965, whose tanks are in transition in 1966 and whose third row is an
 * option; la-2c of 1968, of which no fuel flow is recorded; la-7 of no year; a trainer of 1961 with
 * everything but a baggage limit. Nothing records a wing span.
 */
final class Tourers {

  /** A text that would run if a page did not escape it. */
  static final String SCRIPT = "<script>alert('x')</script>";

  private Tourers() {}

  static Records records() {
    List<Entry> entries = new ArrayList<>();
    entries.addAll(
        List.of(
            source("parts-book"),
            family("turnstone"),
            family("whimbrel"),
            variant("la-2b", "turnstone", 1964, 1967),
            variant("la-2c", "turnstone", 1968, 1968),
            new Variant(
                "la-7",
                "turnstone",
                "LA-7",
                null,
                null,
                List.of(),
                List.of(),
                List.of(),
                List.of()),
            variant("la-5", "whimbrel", 1961, 1961),
            series("lt", "turnstone", "LT-"),
            block("lt-1964", "lt", "LT-0001", "LT-0100", "la-2b", 1964),
            block("lt-1965", "lt", "LT-0101", "LT-0200", "la-2b", 1965),
            block("lt-1966", "lt", "LT-0201", "LT-0300", "la-2b", 1966)));
    for (Figure figure : Figure.ALL) {
      if (figure != Figure.WING_SPAN) {
        String unit = figure == Figure.SEATS ? "count" : code(figure.scale());
        entries.add(number(figure.key(), unit));
      }
    }
    start(entries, "la-2b", "150", "2300", "1400", "40", "100", "8.0", "174", "120");
    start(entries, "la-2c", "160", "2350", "1422", "40", "115", null, "174", "120");
    start(entries, "la-5", "108", "1600", "1012", "21", "99", "5.9", "131", null);
    entries.add(change("gross-2350", "gross-weight", "2350", fromSerial("la-2b", "lt", "LT-0150")));
    entries.add(
        change(
            "empty-1420", "standard-empty-weight", "1420", fromSerial("la-2b", "lt", "LT-0150")));
    entries.add(change("fuel-50", "usable-fuel", "50", betweenYears("la-2b", 1966, 1967)));
    entries.add(
        new Change(
            "seats-4",
            "seats",
            "Four seats " + SCRIPT,
            null,
            List.of(new Offered("4", Fit.STANDARD, null), new Offered("6", Fit.OPTION, null)),
            List.of(CutIn.atStart("la-2b")),
            List.of(citation("seats-by", "parts-book"))));
    return Records.of(entries, List.of());
  }

  private static void start(List<Entry> entries, String variant, String... values) {
    Map<Integer, Figure> order =
        Map.of(
            0, Figure.POWER,
            1, Figure.GROSS_WEIGHT,
            2, Figure.EMPTY_WEIGHT,
            3, Figure.USABLE_FUEL,
            4, Figure.CRUISE_SPEED,
            5, Figure.FUEL_FLOW,
            6, Figure.WING_AREA,
            7, Figure.BAGGAGE_LIMIT);
    for (int i = 0; i < values.length; i++) {
      String value = values[i];
      if (value != null) {
        String key = order.get(i).key();
        entries.add(change(variant + "-" + key, key, value, CutIn.atStart(variant)));
      }
    }
  }

  private static String code(Scale scale) {
    return scale == Scale.FT2 ? "ft2" : scale.sign();
  }
}
