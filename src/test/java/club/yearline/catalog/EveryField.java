package club.yearline.catalog;

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
import club.yearline.effectivity.ProductionRun;
import club.yearline.effectivity.Relation;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.SoldName;
import club.yearline.effectivity.SourceEntry;
import club.yearline.effectivity.Variant;
import club.yearline.effectivity.Visibility;
import club.yearline.effectivity.YearMeaning;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;

/** Entries of every kind: once with every field filled, once with every optional field empty. */
final class EveryField {

  private static final String TEXT = "Två rader,\nmed \"citat\" – och 𝄞 ";

  private EveryField() {}

  /** The pictures that the entries name. */
  static List<PictureFile> pictures() {
    return List.of(
        new PictureFile("second.svg", "image/svg+xml", new byte[] {'<', 0, -1}),
        new PictureFile("la-9b.svg", "image/svg+xml", new byte[] {'<', 1}));
  }

  static List<Entry> filled() {
    return List.of(
        new SourceEntry(
            new Source(
                "full-source",
                SourceKind.SERVICE_BULLETIN,
                "A title",
                "Ek, Åsa; Holm, B.",
                "Lindmark Aero",
                "SB-12 rev. 3",
                "1966-04~",
                "https://example.org/sb-12",
                LocalDate.of(2024, 2, 29),
                TEXT)),
        new Family(
            "full-family",
            "Lindmark Aero",
            "Full",
            "TC-7",
            YearMeaning.MANUFACTURE,
            new BigDecimal("6.00"),
            TEXT,
            cited("full-family-cited")),
        olderVariant(),
        new Variant(
            "full-variant",
            "full-family",
            "LA-9B",
            "la-9b.svg",
            TEXT,
            List.of(new SoldName("Zephyr", 1961, 1962), new SoldName("Aeolus", 1960, null)),
            List.of(new ProductionRun(1962, 1963, 12), new ProductionRun(1960, 1960, null)),
            List.of(new Descent("older-variant", Relation.REPLACED_BY, TEXT)),
            cited("full-variant-cited")),
        new Series("full-series", "full-family", "FS-", 4, true, TEXT, cited("full-series-cited")),
        new SerialBlock(
            "full-block",
            "full-series",
            "FS-0001-60",
            "FS-0020",
            "full-variant",
            1960,
            true,
            cited("full-block-cited")),
        new Feature(
            "full-feature",
            "A feature",
            "52",
            FeatureKind.CHOICE,
            null,
            Visibility.OPENED,
            Exchange.OFTEN_CHANGED,
            TEXT,
            List.of(
                new FeatureValue("second", "the second", "its cue", "second.svg", "A. Ek, CC0"),
                new FeatureValue("first", "the first", null, null, null)),
            cited("full-feature-cited")),
        new Feature(
            "full-figure",
            "A figure",
            "06",
            FeatureKind.NUMBER,
            "lb",
            Visibility.PAPERS,
            Exchange.BUILT_IN,
            null,
            List.of(),
            List.of()),
        new Change(
            "full-change",
            "full-feature",
            "A change",
            TEXT,
            List.of(
                new Offered("second", Fit.STANDARD, null),
                new Offered("first", Fit.OPTION, new BigDecimal("0.250"))),
            List.of(
                new CutIn("full-variant", false, 1960, 1962, "full-series", "FS-0003", "FS-0009"),
                CutIn.atStart("older-variant")),
            List.of(
                new Citation(
                    "full-change-cited",
                    "full-variant",
                    "full-source",
                    "p. 3",
                    Stance.DISPUTES,
                    TEXT))),
        new Retrofit(
            "full-retrofit",
            "full-feature",
            "first",
            "full-variant",
            1960,
            1962,
            "full-series",
            "FS-0001",
            "FS-0012",
            "Kit 12",
            TEXT,
            cited("full-retrofit-cited")));
  }

  static List<Entry> bare() {
    return List.of(
        new SourceEntry(
            new Source(
                "bare-source",
                SourceKind.RECOLLECTION,
                "A title",
                null,
                null,
                null,
                null,
                null,
                null,
                null)),
        new Family(
            "bare-family",
            "Lindmark Aero",
            "Bare",
            null,
            YearMeaning.MODEL_YEAR,
            null,
            null,
            bareCitation("bare-family-cited")),
        new Variant(
            "bare-variant",
            "bare-family",
            "LA-0",
            null,
            null,
            List.of(new SoldName("Null", null, null)),
            List.of(new ProductionRun(1960, null, null)),
            List.of(),
            List.of()),
        new Series("bare-series", "bare-family", null, null, false, null, List.of()),
        new SerialBlock(
            "bare-block", "bare-series", "1", null, "bare-variant", null, false, List.of()),
        new Feature(
            "bare-feature",
            "A feature",
            "52",
            FeatureKind.CHOICE,
            null,
            Visibility.RAMP,
            Exchange.BUILT_IN,
            null,
            List.of(new FeatureValue("only", "the only", null, null, null)),
            List.of()),
        new Change(
            "bare-change",
            "bare-feature",
            "A change",
            null,
            List.of(new Offered("only", Fit.OPTION, null)),
            List.of(new CutIn("bare-variant", false, 1961, null, null, null, null)),
            List.of()),
        new Retrofit(
            "bare-retrofit",
            "bare-feature",
            "only",
            "bare-variant",
            null,
            null,
            null,
            null,
            null,
            "Kit 1",
            null,
            List.of()));
  }

  private static Variant olderVariant() {
    return new Variant(
        "older-variant",
        "full-family",
        "LA-9",
        null,
        null,
        List.of(),
        List.of(new ProductionRun(1959, 1963, 0)),
        List.of(new Descent("full-variant", Relation.BESIDE, null)),
        List.of());
  }

  private static List<Citation> cited(String key) {
    return List.of(
        new Citation(key + "-b", null, "full-source", "p. 2", Stance.SUPPORTS, TEXT),
        new Citation(key + "-a", null, "full-source", null, Stance.DISPUTES, null));
  }

  private static List<Citation> bareCitation(String key) {
    return List.of(new Citation(key, null, "bare-source", null, Stance.SUPPORTS, null));
  }
}
