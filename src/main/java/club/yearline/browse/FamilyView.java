package club.yearline.browse;

import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.citation.Citation;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.SoldName;
import club.yearline.effectivity.Variant;
import club.yearline.effectivity.VariantModel;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What a family's page shows, in words and with addresses. */
final class FamilyView {

  /** As many as stand side by side. */
  private static final int MOST_COMPARED = 6;

  private final Family family;
  private final Catalogue catalogue;
  private final Links links;
  private final Words words;
  private final Wording wording;
  private final List<Variant> variants;

  FamilyView(Family family, Catalogue catalogue, Links links, Words words, Wording wording) {
    this.family = family;
    this.catalogue = catalogue;
    this.links = links;
    this.words = words;
    this.wording = wording;
    this.variants = catalogue.variantsOf(family.key());
  }

  /** One variant of the family. */
  record Row(
      String designation,
      String href,
      @Nullable SideView view,
      String names,
      String years,
      String built,
      List<Lineage.Kin> from) {}

  /** One series of the family. */
  record SeriesRow(String key, String prefix, String serials, String variants, String note) {}

  /** The figures of its variants side by side, each in its last year; null where fewer than two. */
  public @Nullable String getCompareHref() {
    List<Position> last =
        variants.stream()
            .filter(v -> model(v).years().length > 0)
            .map(v -> Position.of(v, model(v).years()[model(v).years().length - 1]))
            .limit(MOST_COMPARED)
            .toList();
    return last.size() < 2 ? null : links.compare(last);
  }

  Family family() {
    return family;
  }

  List<Variant> variants() {
    return variants;
  }

  Links links() {
    return links;
  }

  Words words() {
    return words;
  }

  VariantModel model(Variant variant) {
    return catalogue.model(variant.key()).orElseThrow();
  }

  Production production(Variant variant) {
    return Production.of(variant);
  }

  String years(Variant variant) {
    return production(variant).years(wording);
  }

  String years(int first, @Nullable Integer last) {
    return wording.years(first, last);
  }

  /** From the first year of production to the last; empty without any. */
  public String getSpan() {
    return Production.of(variants).span(wording);
  }

  public String getYearMeaning() {
    return words.say("year-means." + family.yearMeans().code());
  }

  public int getCount() {
    return variants.size();
  }

  /** The airframes built; empty unless each run says so. */
  public String getBuilt() {
    Production all = Production.of(variants);
    return all.built().isPresent() ? "" + all.built().getAsInt() : "";
  }

  /** The variants by first year. */
  public List<Row> getRows() {
    Lineage lineage = new Lineage(catalogue, links, words);
    return variants.stream().map(v -> row(v, lineage)).toList();
  }

  private Row row(Variant variant, Lineage lineage) {
    Production production = production(variant);
    return new Row(
        variant.designation(),
        links.variant(variant.key()),
        SideView.of(variant, catalogue, links, words).orElse(null),
        variant.names().stream().map(SoldName::name).distinct().collect(Collectors.joining(", ")),
        production.years(wording),
        production.built().isPresent() ? "" + production.built().getAsInt() : "",
        lineage.before(variant));
  }

  /** The series, with the serials that blocks allot. */
  List<SeriesRow> series() {
    return catalogue.seriesOf(family.key()).stream().map(this::seriesRow).toList();
  }

  private SeriesRow seriesRow(Series series) {
    List<SerialBlock> blocks = new ArrayList<>();
    List<String> of = new ArrayList<>();
    for (Variant variant : variants) {
      List<SerialBlock> own =
          model(variant).blocks().stream().filter(b -> b.series().equals(series.key())).toList();
      blocks.addAll(own);
      if (!own.isEmpty()) {
        of.add(variant.designation());
      }
    }
    String prefix = series.prefix() == null || series.prefix().isEmpty() ? "" : series.prefix();
    return new SeriesRow(
        series.key(),
        prefix,
        SerialRange.around(series, blocks, words, wording),
        String.join(", ", of),
        series.note() == null ? "" : series.note());
  }

  /** The citations of the family's own record, of its variants' and of its series'. */
  List<Citation> citations() {
    List<Citation> all = new ArrayList<>(family.citations());
    variants.forEach(v -> all.addAll(v.citations()));
    catalogue.seriesOf(family.key()).forEach(s -> all.addAll(s.citations()));
    return all;
  }
}
