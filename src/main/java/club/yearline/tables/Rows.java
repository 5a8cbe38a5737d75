package club.yearline.tables;

import club.yearline.citation.Citation;
import club.yearline.citation.Source;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Records;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.Variant;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The rows of tables as records make them, cells in schema order. */
public final class Rows {

  private Rows() {}

  /** The rows that the records have in a table, in no particular order. */
  public static Stream<String[]> of(String table, Records records) {
    return switch (table) {
      case "families" -> records.families().stream().map(Rows::of);
      case "variants" -> records.variants().stream().map(Rows::of);
      case "variant-names" -> parts(records.variants(), Rows::names);
      case "lineage" -> parts(records.variants(), Rows::lineage);
      case "production-runs" -> parts(records.variants(), Rows::runs);
      case "series" -> records.series().stream().map(Rows::of);
      case "serial-blocks" -> records.blocks().stream().map(Rows::of);
      case "features" -> records.features().stream().map(Rows::of);
      case "feature-values" -> parts(records.features(), Rows::values);
      case "changes" -> records.changes().stream().map(Rows::of);
      case "change-offerings" -> parts(records.changes(), Rows::offerings);
      case "cut-ins" -> parts(records.changes(), Rows::cutIns);
      case "retrofits" -> records.retrofits().stream().map(Rows::of);
      case "sources" -> records.sources().stream().map(e -> of(e.source()));
      case "citations" -> parts(records.entries(), Rows::citations);
      default -> throw new IllegalArgumentException("No rows are made for table " + table);
    };
  }

  private static <T> Stream<String[]> parts(
      Collection<? extends T> owners, Function<T, Stream<String[]>> rows) {
    return owners.stream().flatMap(rows);
  }

  private static String[] of(Family f) {
    return cells(
        f.key(),
        f.maker(),
        f.name(),
        f.typeCertificate(),
        f.yearMeans().code(),
        f.fuelDensity(),
        f.summary());
  }

  private static String[] of(Variant v) {
    return cells(v.key(), v.family(), v.designation(), v.picture(), v.summary());
  }

  private static Stream<String[]> names(Variant v) {
    return v.names().stream().map(n -> cells(v.key(), n.name(), n.firstYear(), n.lastYear()));
  }

  private static Stream<String[]> lineage(Variant v) {
    return v.descent().stream().map(d -> cells(d.from(), v.key(), d.relation().code(), d.note()));
  }

  private static Stream<String[]> runs(Variant v) {
    return v.runs().stream().map(r -> cells(v.key(), r.firstYear(), r.lastYear(), r.built()));
  }

  private static String[] of(Series s) {
    return cells(s.key(), s.family(), s.prefix(), s.digits(), s.yearSuffix(), s.note());
  }

  private static String[] of(SerialBlock b) {
    return cells(
        b.key(),
        b.series(),
        b.firstSerial(),
        b.lastSerial(),
        b.variant(),
        b.year(),
        b.intermixed());
  }

  private static String[] of(Feature f) {
    return cells(
        f.key(),
        f.name(),
        f.chapter(),
        f.kindOfValue().code(),
        f.unit(),
        f.visibility().code(),
        f.exchange().code(),
        f.description());
  }

  private static Stream<String[]> values(Feature f) {
    return f.values().stream()
        .map(v -> cells(f.key(), v.key(), v.label(), v.cue(), v.picture(), v.pictureCredit()));
  }

  private static String[] of(Change c) {
    return cells(c.key(), c.feature(), c.title(), c.detail());
  }

  private static Stream<String[]> offerings(Change c) {
    return c.offering().stream().map(o -> cells(c.key(), o.value(), o.fit().code(), o.takeRate()));
  }

  private static Stream<String[]> cutIns(Change c) {
    return c.cutIns().stream().map(i -> of(c, i));
  }

  private static String[] of(Change c, CutIn i) {
    return cells(
        c.key(),
        i.variant(),
        i.atStart(),
        i.firstYear(),
        i.settledYear(),
        i.series(),
        i.firstSerial(),
        i.settledSerial());
  }

  private static String[] of(Retrofit r) {
    return cells(
        r.key(),
        r.feature(),
        r.value(),
        r.variant(),
        r.firstYear(),
        r.lastYear(),
        r.series(),
        r.firstSerial(),
        r.lastSerial(),
        r.document(),
        r.note());
  }

  private static String[] of(Source s) {
    return cells(
        s.key(),
        s.kind().code(),
        s.title(),
        s.author(),
        s.publisher(),
        s.identifier(),
        s.issued(),
        s.url(),
        s.accessed(),
        s.note());
  }

  private static Stream<String[]> citations(Entry entry) {
    return entry.citations().stream().map(c -> of(entry, c));
  }

  private static String[] of(Entry entry, Citation c) {
    return cells(
        c.key(),
        entry.kind().code(),
        entry.key(),
        c.variant(),
        c.source(),
        c.locator(),
        c.stance().code(),
        c.note());
  }

  private static String[] cells(@Nullable Object... values) {
    String[] cells = new String[values.length];
    for (int i = 0; i < cells.length; i++) {
      cells[i] = cell(values[i]);
    }
    return cells;
  }

  private static String cell(@Nullable Object value) {
    if (value == null) {
      return "";
    }
    if (value instanceof Boolean flag) {
      return flag ? "true" : "";
    }
    return value instanceof BigDecimal number ? number.toPlainString() : value.toString();
  }
}
