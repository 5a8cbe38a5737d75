package club.yearline.exchange;

import club.yearline.citation.Citation;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Descent;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.ProductionRun;
import club.yearline.effectivity.Records;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.SoldName;
import club.yearline.effectivity.Variant;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/** Records with the parts of entries in the order in which a package has them. */
record Sorted(Records records) {

  List<Entry> entries() {
    return records.entries().stream().map(Sorted::sorted).toList();
  }

  private static Entry sorted(Entry entry) {
    if (entry instanceof Family f) {
      return new Family(
          f.key(),
          f.maker(),
          f.name(),
          f.typeCertificate(),
          f.yearMeans(),
          f.fuelDensity(),
          f.summary(),
          by(f.citations(), Citation::key));
    }
    if (entry instanceof Variant v) {
      return new Variant(
          v.key(),
          v.family(),
          v.designation(),
          v.picture(),
          v.summary(),
          by(v.names(), SoldName::name),
          by(v.runs(), ProductionRun::firstYear),
          by(v.descent(), Descent::from),
          by(v.citations(), Citation::key));
    }
    if (entry instanceof Series s) {
      return new Series(
          s.key(),
          s.family(),
          s.prefix(),
          s.digits(),
          s.yearSuffix(),
          s.note(),
          by(s.citations(), Citation::key));
    }
    if (entry instanceof SerialBlock b) {
      return new SerialBlock(
          b.key(),
          b.series(),
          b.firstSerial(),
          b.lastSerial(),
          b.variant(),
          b.year(),
          b.intermixed(),
          by(b.citations(), Citation::key));
    }
    if (entry instanceof Feature f) {
      return new Feature(
          f.key(),
          f.name(),
          f.chapter(),
          f.kindOfValue(),
          f.unit(),
          f.visibility(),
          f.exchange(),
          f.description(),
          by(f.values(), FeatureValue::key),
          by(f.citations(), Citation::key));
    }
    if (entry instanceof Change c) {
      return new Change(
          c.key(),
          c.feature(),
          c.title(),
          c.detail(),
          by(c.offering(), Offered::value),
          by(c.cutIns(), CutIn::variant),
          by(c.citations(), Citation::key));
    }
    if (entry instanceof Retrofit r) {
      return new Retrofit(
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
          r.note(),
          by(r.citations(), Citation::key));
    }
    return entry;
  }

  private static <T, K extends Comparable<K>> List<T> by(List<T> parts, Function<T, K> key) {
    return parts.stream().sorted(Comparator.comparing(key)).toList();
  }
}
