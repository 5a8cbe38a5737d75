package club.yearline.testing;

import club.yearline.citation.Citation;
import club.yearline.citation.Source;
import club.yearline.citation.SourceKind;
import club.yearline.citation.Stance;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Exchange;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureKind;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.ProductionRun;
import club.yearline.effectivity.Records;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.SourceEntry;
import club.yearline.effectivity.Variant;
import club.yearline.effectivity.Visibility;
import club.yearline.effectivity.YearMeaning;
import java.util.List;
import java.util.stream.Stream;

/**
 * Small valid entries for tests, all invented. {@link #turnstone()} is a whole catalogue without
 * findings: one variant built 1964 to 1968, serials LT-0001 to LT-0500, a door latch that went from
 * sliding to rotary in 1966.
 */
public final class Sample {

  private Sample() {}

  /** One family, complete and without findings. */
  public static List<Entry> turnstone() {
    return List.of(
        source("parts-book"),
        family("turnstone"),
        variant("la-2b", "turnstone", 1964, 1968),
        series("lt", "turnstone", "LT-"),
        block("lt-1964", "lt", "LT-0001", "LT-0100", "la-2b", 1964),
        block("lt-1965", "lt", "LT-0101", "LT-0200", "la-2b", 1965),
        block("lt-1966", "lt", "LT-0201", "LT-0300", "la-2b", 1966),
        block("lt-1967", "lt", "LT-0301", "LT-0400", "la-2b", 1967),
        block("lt-1968", "lt", "LT-0401", "LT-0500", "la-2b", 1968),
        choice("door-latch", "sliding", "rotary"),
        change("door-latch-at-start", "door-latch", "sliding", CutIn.atStart("la-2b")),
        change("door-latch-rotary", "door-latch", "rotary", fromYear("la-2b", 1966)));
  }

  /** The entries as records. */
  public static Records records(List<? extends Entry> entries) {
    return Records.of(entries, List.of());
  }

  /** The entries, with others instead of those of the same kind and key. */
  public static List<Entry> with(List<Entry> entries, Entry... others) {
    List<Entry> instead = List.of(others);
    return Stream.concat(
            entries.stream()
                .filter(
                    e ->
                        instead.stream()
                            .noneMatch(o -> o.kind() == e.kind() && o.key().equals(e.key()))),
            instead.stream())
        .toList();
  }

  /** A family that counts model years. */
  public static Family family(String key) {
    return new Family(
        key,
        "Lindmark Aero",
        "Family " + key,
        "TC-2",
        YearMeaning.MODEL_YEAR,
        null,
        null,
        List.of());
  }

  /** A variant with one production run. */
  public static Variant variant(String key, String family, int firstYear, int lastYear) {
    return new Variant(
        key,
        family,
        "Variant " + key,
        null,
        null,
        List.of(),
        List.of(new ProductionRun(firstYear, lastYear, null)),
        List.of(),
        List.of());
  }

  /** A series whose serials show four digits. */
  public static Series series(String key, String family, String prefix) {
    return new Series(key, family, prefix, 4, false, null, List.of());
  }

  /** A block that no other shares. */
  public static SerialBlock block(
      String key, String series, String first, String last, String variant, int year) {
    return new SerialBlock(key, series, first, last, variant, year, false, List.of());
  }

  /** A choice feature that is seen from the ramp. */
  public static Feature choice(String key, String... values) {
    return new Feature(
        key,
        "Feature " + key,
        "52",
        FeatureKind.CHOICE,
        null,
        Visibility.RAMP,
        Exchange.BOLT_ON,
        null,
        Stream.of(values).map(v -> new FeatureValue(v, "the " + v, null, null, null)).toList(),
        List.of());
  }

  /** A number feature in the given unit. */
  public static Feature number(String key, String unit) {
    return new Feature(
        key,
        "Figure " + key,
        "06",
        FeatureKind.NUMBER,
        unit,
        Visibility.PAPERS,
        Exchange.BUILT_IN,
        null,
        List.of(),
        List.of());
  }

  /** A change to one standard value, on the word of the parts book. */
  public static Change change(String key, String feature, String value, CutIn... cutIns) {
    return new Change(
        key,
        feature,
        "Change " + key,
        null,
        List.of(new Offered(value, Fit.STANDARD, null)),
        List.of(cutIns),
        List.of(citation(key + "-cited", "parts-book")));
  }

  /** A clean cut-in at the beginning of a year. */
  public static CutIn fromYear(String variant, int year) {
    return new CutIn(variant, false, year, year, null, null, null);
  }

  /** A transition over years. */
  public static CutIn betweenYears(String variant, int first, int settled) {
    return new CutIn(variant, false, first, settled, null, null, null);
  }

  /** A clean cut-in at a serial. */
  public static CutIn fromSerial(String variant, String series, String serial) {
    return new CutIn(variant, false, null, null, series, serial, serial);
  }

  /** A parts catalogue. */
  public static SourceEntry source(String key) {
    return new SourceEntry(
        new Source(
            key,
            SourceKind.PARTS_CATALOGUE,
            "Source " + key,
            null,
            "Lindmark Aero",
            null,
            "1967",
            null,
            null,
            null));
  }

  /** A supporting citation of a whole record. */
  public static Citation citation(String key, String source) {
    return new Citation(key, null, source, "fig. 31", Stance.SUPPORTS, null);
  }
}
