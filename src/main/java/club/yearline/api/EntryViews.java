package club.yearline.api;

import club.yearline.catalog.CitedBy;
import club.yearline.catalog.Reading;
import club.yearline.citation.Grade;
import club.yearline.citation.Source;
import club.yearline.citation.SourceKind;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.EntryKind;
import club.yearline.effectivity.Exchange;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureKind;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.ProductionRun;
import club.yearline.effectivity.Relation;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.Variant;
import club.yearline.effectivity.Visibility;
import club.yearline.effectivity.YearMeaning;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Catalogue entries as the API shows them, with the keys of what belongs to them. */
final class EntryViews {

  private EntryViews() {}

  /** An entry with the revision it was read at. */
  record Read<T>(int revision, @JsonUnwrapped T entry) {}

  record Families(int revision, List<FamilyLine> families) {}

  record FamilyLine(String key, String maker, String name, List<String> variants) {}

  record FamilyView(
      String key,
      String maker,
      String name,
      @Nullable String typeCertificate,
      @Coded(YearMeaning.class) String yearMeans,
      @Nullable BigDecimal fuelDensityLbPerGal,
      @Nullable String summary,
      List<String> variants,
      List<SeriesView> series,
      List<CitationView> citations) {}

  record SeriesView(
      String key,
      @Nullable String prefix,
      @Nullable Integer digits,
      boolean yearSuffix,
      @Nullable String note,
      List<CitationView> citations) {}

  record VariantView(
      String key,
      String family,
      String designation,
      @Nullable String picture,
      @Nullable String summary,
      List<NameView> names,
      List<RunView> runs,
      List<DescentView> lineage,
      List<BlockView> blocks,
      List<CitationView> citations) {}

  record NameView(String name, @Nullable Integer firstYear, @Nullable Integer lastYear) {}

  record RunView(int firstYear, @Nullable Integer lastYear, @Nullable Integer built) {

    static RunView of(ProductionRun run) {
      return new RunView(run.firstYear(), run.lastYear(), run.built());
    }
  }

  record DescentView(
      String from, String to, @Coded(Relation.class) String relation, @Nullable String note) {}

  record BlockView(
      String key,
      String series,
      String variant,
      @Nullable Integer year,
      String first,
      @Nullable String last,
      boolean intermixed) {

    static BlockView of(SerialBlock block) {
      return new BlockView(
          block.key(),
          block.series(),
          block.variant(),
          block.year(),
          block.firstSerial(),
          block.lastSerial(),
          block.intermixed());
    }

    static @Nullable BlockView ofNullable(@Nullable SerialBlock block) {
      return block == null ? null : of(block);
    }
  }

  record FeatureView(
      String key,
      String name,
      String chapter,
      @Coded(FeatureKind.class) String kind,
      @Nullable String unit,
      @Coded(Visibility.class) String visibility,
      @Coded(Exchange.class) String exchange,
      @Nullable String description,
      List<FeatureValueView> values,
      List<String> changes,
      List<CitationView> citations) {}

  record FeatureValueView(
      String key,
      String label,
      @Nullable String cue,
      @Nullable String picture,
      @Nullable String pictureCredit) {}

  record ChangeView(
      String key,
      String feature,
      String title,
      @Nullable String detail,
      List<ValueView> offering,
      List<CutInView> cutIns,
      List<CitationView> citations) {}

  record CutInView(String variant, boolean atStart, @Nullable WindowView window) {}

  record SourceView(
      String key,
      @Coded(SourceKind.class) String kind,
      @Coded(Grade.class) String grade,
      String title,
      @Nullable String author,
      @Nullable String publisher,
      @Nullable String identifier,
      @Nullable String issued,
      @Nullable String url,
      @Nullable LocalDate accessed,
      @Nullable String note,
      List<Citing> citedBy) {}

  /** A record that cites the source. */
  record Citing(
      @Coded(EntryKind.class) String kind, String record, @JsonUnwrapped CitationView citation) {}

  static Families families(Reading reading) {
    Catalogue catalogue = reading.catalogue();
    return new Families(
        reading.revision(),
        catalogue.records().families().stream()
            .map(f -> new FamilyLine(f.key(), f.maker(), f.name(), variants(catalogue, f)))
            .toList());
  }

  private static List<String> variants(Catalogue catalogue, Family family) {
    return catalogue.variantsOf(family.key()).stream().map(Variant::key).toList();
  }

  static FamilyView of(Catalogue catalogue, Family family) {
    return new FamilyView(
        family.key(),
        family.maker(),
        family.name(),
        family.typeCertificate(),
        family.yearMeans().code(),
        family.fuelDensity(),
        family.summary(),
        variants(catalogue, family),
        catalogue.seriesOf(family.key()).stream().map(EntryViews::of).toList(),
        CitationView.all(family.citations()));
  }

  private static SeriesView of(Series series) {
    return new SeriesView(
        series.key(),
        series.prefix(),
        series.digits(),
        series.yearSuffix(),
        series.note(),
        CitationView.all(series.citations()));
  }

  static VariantView of(Catalogue catalogue, Variant variant) {
    return new VariantView(
        variant.key(),
        variant.family(),
        variant.designation(),
        variant.picture(),
        variant.summary(),
        variant.names().stream()
            .map(n -> new NameView(n.name(), n.firstYear(), n.lastYear()))
            .toList(),
        variant.runs().stream().map(RunView::of).toList(),
        variant.descent().stream()
            .map(d -> new DescentView(d.from(), variant.key(), d.relation().code(), d.note()))
            .toList(),
        catalogue.model(variant.key()).orElseThrow().blocks().stream().map(BlockView::of).toList(),
        CitationView.all(variant.citations()));
  }

  static FeatureView of(Catalogue catalogue, Feature feature) {
    return new FeatureView(
        feature.key(),
        feature.name(),
        feature.chapter(),
        feature.kindOfValue().code(),
        feature.unit(),
        feature.visibility().code(),
        feature.exchange().code(),
        feature.description(),
        feature.values().stream()
            .map(
                v ->
                    new FeatureValueView(
                        v.key(), v.label(), v.cue(), v.picture(), v.pictureCredit()))
            .toList(),
        catalogue.changesOf(feature.key()).stream().map(Change::key).toList(),
        CitationView.all(feature.citations()));
  }

  static ChangeView of(Catalogue catalogue, Change change) {
    Feature feature = catalogue.feature(change.feature()).orElseThrow();
    List<Offered> offering = change.offering();
    return new ChangeView(
        change.key(),
        change.feature(),
        change.title(),
        change.detail(),
        offering.stream().map(o -> ValueView.of(feature, o)).toList(),
        change.cutIns().stream()
            .map(c -> new CutInView(c.variant(), c.atStart(), WindowView.of(c)))
            .toList(),
        CitationView.all(change.citations()));
  }

  static SourceView of(Catalogue catalogue, Source source) {
    return new SourceView(
        source.key(),
        source.kind().code(),
        source.kind().grade().code(),
        source.title(),
        source.author(),
        source.publisher(),
        source.identifier(),
        source.issued(),
        source.url(),
        source.accessed(),
        source.note(),
        CitedBy.of(catalogue).source(source.key()).stream().map(EntryViews::citing).toList());
  }

  private static Citing citing(CitedBy.Mention mention) {
    Entry entry = mention.entry();
    return new Citing(entry.kind().code(), entry.key(), CitationView.of(mention.citation()));
  }
}
