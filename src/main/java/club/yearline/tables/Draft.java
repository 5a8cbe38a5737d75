package club.yearline.tables;

import club.yearline.citation.Citation;
import club.yearline.citation.Source;
import club.yearline.citation.SourceKind;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.EntryKind;
import club.yearline.effectivity.Exchange;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureKind;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.SourceEntry;
import club.yearline.effectivity.Variant;
import club.yearline.effectivity.Visibility;
import club.yearline.effectivity.YearMeaning;
import java.util.ArrayList;
import java.util.List;

/**
 * A catalogue while its tables are read. Tables whose rows entries hold come first ({@link
 * #ORDER}), so that every entry is made whole.
 */
public final class Draft {

  /** The order in which tables are read. */
  public static final List<String> ORDER =
      List.of(
          "citations",
          "variant-names",
          "production-runs",
          "lineage",
          "feature-values",
          "change-offerings",
          "cut-ins",
          "families",
          "variants",
          "series",
          "serial-blocks",
          "features",
          "changes",
          "retrofits",
          "sources");

  private final Keys keys = new Keys();
  private final Parts parts = new Parts(keys);
  private final List<Entry> entries = new ArrayList<>();

  /** The entries read so far. */
  public List<Entry> entries() {
    return entries;
  }

  /** What rows name as the entry that holds them, and no entry is. */
  public List<Orphan> orphans() {
    return parts.orphans();
  }

  /** Takes in a row of the named table. */
  public void add(String table, Row row) {
    switch (table) {
      case "families" -> entries.add(family(row));
      case "variants" -> entries.add(variant(row));
      case "series" -> entries.add(series(row));
      case "serial-blocks" -> entries.add(block(row));
      case "features" -> entries.add(feature(row));
      case "changes" -> entries.add(change(row));
      case "retrofits" -> entries.add(retrofit(row));
      case "sources" -> entries.add(source(row));
      default -> parts.add(table, row);
    }
  }

  private Family family(Row row) {
    return new Family(
        keys.of(row, "key"),
        row.text("maker"),
        row.text("name"),
        row.textOrNull("type_certificate"),
        row.word("year_means", YearMeaning.class),
        row.number("fuel_density_lb_per_gal"),
        row.textOrNull("summary"),
        citationsOf(EntryKind.FAMILY, row));
  }

  private Variant variant(Row row) {
    String key = keys.of(row, "key");
    return new Variant(
        key,
        keys.of(row, "family"),
        row.text("designation"),
        row.textOrNull("picture"),
        row.textOrNull("summary"),
        parts.names.take(key),
        parts.runs.take(key),
        parts.descent.take(key),
        citationsOf(EntryKind.VARIANT, row));
  }

  private Series series(Row row) {
    return new Series(
        keys.of(row, "key"),
        keys.of(row, "family"),
        row.textOrNull("prefix"),
        row.whole("digits"),
        row.flag("year_suffix"),
        row.textOrNull("note"),
        citationsOf(EntryKind.SERIES, row));
  }

  private SerialBlock block(Row row) {
    return new SerialBlock(
        row.text("key"),
        keys.of(row, "series"),
        row.text("first_serial"),
        row.textOrNull("last_serial"),
        keys.of(row, "variant"),
        row.whole("year"),
        row.flag("intermixed"),
        citationsOf(EntryKind.SERIAL_BLOCK, row));
  }

  private Feature feature(Row row) {
    String key = keys.of(row, "key");
    return new Feature(
        key,
        row.text("name"),
        row.text("chapter"),
        row.word("kind", FeatureKind.class),
        row.textOrNull("unit"),
        row.word("visibility", Visibility.class),
        row.word("exchange", Exchange.class),
        row.textOrNull("description"),
        parts.values.take(key),
        citationsOf(EntryKind.FEATURE, row));
  }

  private Change change(Row row) {
    String key = row.text("key");
    return new Change(
        key,
        keys.of(row, "feature"),
        row.text("title"),
        row.textOrNull("detail"),
        parts.offerings.take(key),
        parts.cutIns.take(key),
        citationsOf(EntryKind.CHANGE, row));
  }

  private Retrofit retrofit(Row row) {
    return new Retrofit(
        row.text("key"),
        keys.of(row, "feature"),
        keys.of(row, "value"),
        keys.of(row, "variant"),
        row.whole("first_year"),
        row.whole("last_year"),
        keys.orNull(row, "series"),
        row.textOrNull("first_serial"),
        row.textOrNull("last_serial"),
        row.text("document"),
        row.textOrNull("note"),
        citationsOf(EntryKind.RETROFIT, row));
  }

  private SourceEntry source(Row row) {
    return new SourceEntry(
        new Source(
            keys.of(row, "key"),
            row.word("kind", SourceKind.class),
            row.text("title"),
            row.textOrNull("author"),
            row.textOrNull("publisher"),
            row.textOrNull("identifier"),
            row.textOrNull("issued"),
            row.textOrNull("url"),
            row.day("accessed"),
            row.textOrNull("note")));
  }

  private List<Citation> citationsOf(EntryKind kind, Row row) {
    return parts.citations.take(kind.code() + "/" + row.text("key"));
  }
}
