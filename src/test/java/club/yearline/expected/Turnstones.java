package club.yearline.expected;

import static club.yearline.testing.Sample.betweenYears;
import static club.yearline.testing.Sample.block;
import static club.yearline.testing.Sample.change;
import static club.yearline.testing.Sample.choice;
import static club.yearline.testing.Sample.citation;
import static club.yearline.testing.Sample.family;
import static club.yearline.testing.Sample.fromSerial;
import static club.yearline.testing.Sample.fromYear;
import static club.yearline.testing.Sample.number;
import static club.yearline.testing.Sample.series;
import static club.yearline.testing.Sample.source;
import static club.yearline.testing.Sample.variant;

import club.yearline.citation.Citation;
import club.yearline.citation.Source;
import club.yearline.citation.SourceKind;
import club.yearline.citation.Stance;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Exchange;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureKind;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Picture;
import club.yearline.effectivity.Records;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.SourceEntry;
import club.yearline.effectivity.Visibility;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An invented catalogue in which every state of an answer and every trouble can be met: variant
 * la-2b of 1964 to 1968, la-2c beside it in 1968, serials LT-0001 to LT-0510 with a gap from 301 to
 * 310, and a trainer whose serials have no prefix.
 */
final class Turnstones {

  /** A text that would run if a page did not escape it. */
  static final String SCRIPT = "<script>alert('x')</script>";

  private Turnstones() {}

  static Records records() {
    return Records.of(
        List.<Entry>of(
            source("parts-book"),
            directive(),
            family("turnstone"),
            family("whimbrel"),
            variant("la-2b", "turnstone", 1964, 1968),
            variant("la-2c", "turnstone", 1968, 1969),
            variant("la-5", "whimbrel", 1961, 1962),
            series("lt", "turnstone", "LT-"),
            series("w", "whimbrel", ""),
            block("lt-1964", "lt", "LT-0001", "LT-0100", "la-2b", 1964),
            block("lt-1965", "lt", "LT-0101", "LT-0200", "la-2b", 1965),
            block("lt-1966", "lt", "LT-0201", "LT-0300", "la-2b", 1966),
            block("lt-1967", "lt", "LT-0311", "LT-0400", "la-2b", 1967),
            block("lt-1968", "lt", "LT-0401", "LT-0450", "la-2b", 1968),
            shared("lt-1968-b", "LT-0451", "LT-0500", "la-2b", 1968),
            shared("lt-1968-c", "LT-0451", "LT-0500", "la-2c", 1968),
            new SerialBlock("lt-late", "lt", "LT-0501", "LT-0510", "la-2b", null, false, List.of()),
            latch(),
            change("latch-start", "door-latch", "sliding", CutIn.atStart("la-2b")),
            change("latch-rotary", "door-latch", "rotary", betweenYears("la-2b", 1966, 1967)),
            kit("kit-latch", "rotary", 1964, 1965, "directive-9"),
            kit("kit-late", "rotary", 1967, 1967, "parts-book"),
            number("power", "hp"),
            change("power-145", "power", "145", CutIn.atStart("la-2b")),
            change("power-160", "power", "160", fromSerial("la-2b", "lt", "LT-0150")),
            choice("radio", "fitted"),
            change("radio-fitted", "radio", "fitted", fromYear("la-2b", 1967)),
            choice("vent", "plain", "scoop"),
            change("vent-plain", "vent", "plain", CutIn.atStart("la-2b")),
            change("vent-scoop", "vent", "scoop", unknownBeginning()),
            choice("paint", "plain", "two-tone"),
            paint(),
            change("paint-c", "paint", "plain", CutIn.atStart("la-2c"))),
        List.of(new Picture("latch.svg", "image/svg+xml", "b".repeat(64))));
  }

  private static SerialBlock shared(
      String key, String first, String last, String variant, int year) {
    return new SerialBlock(key, "lt", first, last, variant, year, true, List.of());
  }

  private static Feature latch() {
    return new Feature(
        "door-latch",
        "Door latch",
        "52",
        FeatureKind.CHOICE,
        null,
        Visibility.CABIN,
        Exchange.BOLT_ON,
        null,
        List.of(
            new FeatureValue("sliding", "sliding bolt", "A flat bolt. " + SCRIPT, null, null),
            new FeatureValue("rotary", "rotary latch", "A round knob.", "latch.svg", null)),
        List.of());
  }

  private static CutIn unknownBeginning() {
    return new CutIn("la-2b", false, null, 1966, null, null, null);
  }

  private static Change paint() {
    return new Change(
        "paint-start",
        "paint",
        "Two colours " + SCRIPT,
        null,
        List.of(
            new Offered("two-tone", Fit.OPTION, new BigDecimal("0.25")),
            new Offered("plain", Fit.STANDARD, null)),
        List.of(CutIn.atStart("la-2b")),
        List.of(
            citation("paint-for", "parts-book"),
            new Citation("paint-no", null, "directive-9", "p. 2", Stance.DISPUTES, SCRIPT)));
  }

  private static Retrofit kit(
      String key, String value, int first, @Nullable Integer last, String source) {
    return new Retrofit(
        key,
        "door-latch",
        value,
        "la-2b",
        first,
        last,
        null,
        null,
        null,
        "Kit " + key,
        null,
        List.of(citation(key + "-by", source)));
  }

  private static SourceEntry directive() {
    return new SourceEntry(
        new Source(
            "directive-9",
            SourceKind.AIRWORTHINESS_DIRECTIVE,
            "Directive 9",
            null,
            null,
            null,
            null,
            null,
            null,
            null));
  }
}
