package club.yearline.testing;

import club.yearline.citation.Citation;
import club.yearline.citation.Source;
import club.yearline.citation.SourceKind;
import club.yearline.citation.Stance;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Descent;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Exchange;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureKind;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Picture;
import club.yearline.effectivity.ProductionRun;
import club.yearline.effectivity.Records;
import club.yearline.effectivity.Relation;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.SoldName;
import club.yearline.effectivity.SourceEntry;
import club.yearline.effectivity.Variant;
import club.yearline.effectivity.Visibility;
import club.yearline.effectivity.YearMeaning;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A catalogue small enough to know by heart. Two families: the Turnstone (LA-2 1956 to 1957, LA-2A
 * 1958 to 1960 with a gap in 1959; serials LT-0001 to LT-0060, 31 to 40 in no block) and the
 * Whimbrel (LA-5 1961 to 1962; serials without a prefix, 1 to 40, and a year-less block). The door
 * latch splits 1957 at LT-0015; the landing light is in transition in 1960.
 */
public final class SmallCatalogue {

  /** A text that would run if a page did not escape it. */
  public static final String SCRIPT = "<script>alert('x')</script>";

  private SmallCatalogue() {}

  /** Its records. */
  public static Records records() {
    List<Entry> entries =
        List.of(
            family("turnstone", "LA-2 Turnstone", YearMeaning.MODEL_YEAR),
            family("whimbrel", "LA-5 Whimbrel", YearMeaning.MANUFACTURE),
            new Variant(
                "la-2",
                "turnstone",
                "LA-2",
                "side-la-2.svg",
                "The first of them. " + SCRIPT,
                List.of(new SoldName("Turnstone", 1956, 1957)),
                List.of(new ProductionRun(1956, 1957, 20)),
                List.of(),
                cited("v1")),
            new Variant(
                "la-2a",
                "turnstone",
                "LA-2A",
                null,
                null,
                List.of(
                    new SoldName("Turnstone", 1958, null),
                    new SoldName("Turnstone De Luxe", 1960, 1960)),
                List.of(new ProductionRun(1958, 1958, null), new ProductionRun(1960, 1960, null)),
                List.of(new Descent("la-2", Relation.DEVELOPED_INTO, "A new fin.")),
                List.of()),
            new Variant(
                "la-5",
                "whimbrel",
                "LA-5",
                null,
                null,
                List.of(new SoldName("Whimbrel", null, null)),
                List.of(new ProductionRun(1961, 1962, null)),
                List.of(),
                List.of()),
            new Series("lt", "turnstone", "LT-", 4, false, "One count for all.", List.of()),
            new Series("w", "whimbrel", null, null, false, null, List.of()),
            block("lt", "LT-0001", "LT-0010", "la-2", 1956),
            block("lt", "LT-0011", "LT-0020", "la-2", 1957),
            block("lt", "LT-0021", "LT-0030", "la-2a", 1958),
            block("lt", "LT-0041", "LT-0060", "la-2a", 1960),
            block("w", "1", "30", "la-5", 1961),
            block("w", "31", "40", "la-5", null),
            choice(
                "door-latch",
                "Door latch",
                "52",
                List.of(
                    new FeatureValue("pull", "pull handle", "A plain bow.", null, null),
                    new FeatureValue(
                        "rotary", "rotary latch", "A round knob.", "latch.svg", "Club"))),
            choice(
                "landing-light",
                "Landing light",
                "33",
                List.of(
                    new FeatureValue("wing", "in the left wing", null, null, null),
                    new FeatureValue("nose", "in the nose bowl", null, null, null))),
            new Feature(
                "power",
                "Power",
                "72",
                FeatureKind.NUMBER,
                "hp",
                Visibility.PAPERS,
                Exchange.MAJOR_WORK,
                null,
                List.of(),
                List.of()),
            change(
                "latch-start",
                "door-latch",
                "pull",
                Fit.STANDARD,
                CutIn.atStart("la-2"),
                cited("c1")),
            change(
                "latch-rotary",
                "door-latch",
                "rotary",
                Fit.STANDARD,
                new CutIn("la-2", false, null, null, "lt", "LT-0015", "LT-0015"),
                List.of()),
            change(
                "latch-a", "door-latch", "rotary", Fit.STANDARD, CutIn.atStart("la-2a"), List.of()),
            change(
                "light-start",
                "landing-light",
                "wing",
                Fit.STANDARD,
                CutIn.atStart("la-2a"),
                cited("c2")),
            change(
                "light-nose",
                "landing-light",
                "nose",
                Fit.STANDARD,
                new CutIn("la-2a", false, 1960, 1961, null, null, null),
                List.of(new Citation("c3", null, "book", "p. 12", Stance.DISPUTES, null))),
            change("power-145", "power", "145", Fit.STANDARD, CutIn.atStart("la-2"), cited("c4")),
            change(
                "power-160",
                "power",
                "160",
                Fit.STANDARD,
                new CutIn("la-2", false, 1957, 1957, null, null, null),
                cited("c5")),
            change("power-5", "power", "108.50", Fit.STANDARD, CutIn.atStart("la-5"), List.of()),
            new Retrofit(
                "kit",
                "door-latch",
                "rotary",
                "la-2",
                1956,
                1957,
                null,
                null,
                null,
                "Kit SK-52-01",
                null,
                List.of()),
            source(
                "manual", SourceKind.MAINTENANCE_MANUAL, "Turnstone maintenance manual", "LA-MM-2"),
            source("book", SourceKind.BOOK, "High wing over Halvik", null));
    return Records.of(
        entries,
        List.of(
            new Picture("side-la-2.svg", "image/svg+xml", "a".repeat(64)),
            new Picture("latch.svg", "image/svg+xml", "b".repeat(64))));
  }

  private static Family family(String key, String name, YearMeaning years) {
    return new Family(
        key,
        "Lindmark Aero",
        name,
        "SAO TC " + key.length(),
        years,
        null,
        "Summary of the " + name + ".",
        List.of());
  }

  private static SerialBlock block(
      String series, String first, String last, String variant, @Nullable Integer year) {
    return new SerialBlock(
        series + "-" + first, series, first, last, variant, year, false, List.of());
  }

  private static Feature choice(
      String key, String name, String chapter, List<FeatureValue> values) {
    return new Feature(
        key,
        name,
        chapter,
        FeatureKind.CHOICE,
        null,
        Visibility.CLOSE,
        Exchange.BOLT_ON,
        null,
        values,
        List.of());
  }

  private static Change change(
      String key, String feature, String value, Fit fit, CutIn cutIn, List<Citation> citations) {
    return new Change(
        key,
        feature,
        "Change " + key,
        null,
        List.of(new Offered(value, fit, null)),
        List.of(cutIn),
        citations);
  }

  private static List<Citation> cited(String key) {
    return List.of(new Citation(key, null, "manual", "2-14", Stance.SUPPORTS, null));
  }

  private static SourceEntry source(
      String key, SourceKind kind, String title, @Nullable String identifier) {
    return new SourceEntry(
        new Source(key, kind, title, null, "Lindmark Aero", identifier, "1959", null, null, null));
  }
}
