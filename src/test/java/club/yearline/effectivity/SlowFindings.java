package club.yearline.effectivity;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The errors among records, slowly: each as code, table and record in one text (section 6). */
final class SlowFindings {

  private final Records records;
  private final Set<String> found = new TreeSet<>();

  private SlowFindings(Records records) {
    this.records = records;
  }

  static Set<String> errors(Records records) {
    SlowFindings findings = new SlowFindings(records);
    findings.references();
    findings.serials();
    findings.changes();
    findings.keys();
    findings.overlaps();
    return findings.found;
  }

  private void add(Finding.Code code, String table, String record) {
    found.add(code.code() + " " + table + " " + record);
  }

  private static <T extends Entry> @Nullable T find(List<T> entries, @Nullable String key) {
    return entries.stream().filter(e -> e.key().equals(key)).findFirst().orElse(null);
  }

  private void known(List<? extends Entry> entries, String key, String table, String record) {
    if (find(entries, key) == null) {
      add(Finding.Code.UNKNOWN_REFERENCE, table, record);
    }
  }

  private void picture(@Nullable String name, String table, String record) {
    if (name != null && records.pictures().stream().noneMatch(p -> p.name().equals(name))) {
      add(Finding.Code.UNKNOWN_REFERENCE, table, record);
    }
  }

  private void references() {
    for (Variant variant : records.variants()) {
      known(records.families(), variant.family(), "variants", variant.key());
      picture(variant.picture(), "variants", variant.key());
      for (Descent descent : variant.descent()) {
        String record = descent.from() + "/" + variant.key();
        known(records.variants(), descent.from(), "lineage", record);
      }
    }
    records.series().forEach(s -> known(records.families(), s.family(), "series", s.key()));
    for (SerialBlock block : records.blocks()) {
      known(records.variants(), block.variant(), "serial-blocks", block.key());
      series(block.series(), block.variant(), "serial-blocks", block.key());
    }
    for (Feature feature : records.features()) {
      for (FeatureValue value : feature.values()) {
        picture(value.picture(), "feature-values", feature.key() + "/" + value.key());
      }
    }
    for (Retrofit retrofit : records.retrofits()) {
      known(records.features(), retrofit.feature(), "retrofits", retrofit.key());
      known(records.variants(), retrofit.variant(), "retrofits", retrofit.key());
      series(retrofit.series(), retrofit.variant(), "retrofits", retrofit.key());
    }
    for (Entry entry : records.entries()) {
      entry.citations().forEach(c -> known(records.sources(), c.source(), "citations", c.key()));
    }
  }

  private void series(@Nullable String key, String variant, String table, String record) {
    if (key == null) {
      return;
    }
    known(records.series(), key, table, record);
    Series series = find(records.series(), key);
    Variant owner = find(records.variants(), variant);
    if (series != null && owner != null && !series.family().equals(owner.family())) {
      add(Finding.Code.SERIES_OF_OTHER_FAMILY, table, record);
    }
  }

  private void serials() {
    for (SerialBlock b : records.blocks()) {
      window("serial-blocks", b.key(), b.series(), b.firstSerial(), b.lastSerial());
    }
    for (Retrofit r : records.retrofits()) {
      window("retrofits", r.key(), r.series(), r.firstSerial(), r.lastSerial());
      years("retrofits", r.key(), r.firstYear(), r.lastYear());
    }
  }

  private void years(String table, String record, @Nullable Integer first, @Nullable Integer last) {
    if (first != null && last != null && first > last) {
      add(Finding.Code.REVERSED_WINDOW, table, record);
    }
  }

  private void window(
      String table,
      String record,
      @Nullable String key,
      @Nullable String first,
      @Nullable String last) {
    Series series = find(records.series(), key);
    if (series == null) {
      return;
    }
    Serial from = first == null ? null : SlowSerials.read(series, first);
    Serial to = last == null ? null : SlowSerials.read(series, last);
    if ((first != null && from == null) || (last != null && to == null)) {
      add(Finding.Code.UNREADABLE_SERIAL, table, record);
    }
    if (from != null && to != null && SlowSerials.order(from, to) > 0) {
      add(Finding.Code.REVERSED_WINDOW, table, record);
    }
  }

  private void changes() {
    Map<String, String> started = new HashMap<>();
    for (Change change : records.changes()) {
      known(records.features(), change.feature(), "changes", change.key());
      if (change.offering().isEmpty()) {
        add(Finding.Code.EMPTY_OFFERING, "changes", change.key());
      }
      for (Offered offered : change.offering()) {
        value(change.feature(), offered.value(), "change-offerings", change.key() + "/");
      }
      for (CutIn cutIn : change.cutIns()) {
        cutIn(change, cutIn, started);
      }
    }
    for (Retrofit retrofit : records.retrofits()) {
      Feature feature = find(records.features(), retrofit.feature());
      if (feature != null && !has(feature, retrofit.value())) {
        add(Finding.Code.VALUE_OF_OTHER_FEATURE, "retrofits", retrofit.key());
      }
    }
  }

  private void value(String key, String value, String table, String record) {
    Feature feature = find(records.features(), key);
    if (feature != null && !has(feature, value)) {
      add(Finding.Code.VALUE_OF_OTHER_FEATURE, table, record + value);
    }
  }

  private static boolean has(Feature feature, String value) {
    return feature.kindOfValue() == FeatureKind.NUMBER
        ? value.matches("[-+]?[0-9]+([.][0-9]+)?")
        : feature.values().stream().anyMatch(v -> v.key().equals(value));
  }

  private void cutIn(Change change, CutIn cutIn, Map<String, String> started) {
    String record = change.key() + "/" + cutIn.variant();
    known(records.variants(), cutIn.variant(), "cut-ins", record);
    series(cutIn.series(), cutIn.variant(), "cut-ins", record);
    window("cut-ins", record, cutIn.series(), cutIn.firstSerial(), cutIn.settledSerial());
    years("cut-ins", record, cutIn.firstYear(), cutIn.settledYear());
    boolean end =
        cutIn.firstYear() != null
            || cutIn.settledYear() != null
            || cutIn.firstSerial() != null
            || cutIn.settledSerial() != null;
    String start = change.feature() + "/" + cutIn.variant();
    String other = cutIn.atStart() ? started.put(start, change.key()) : null;
    if (cutIn.atStart() == end || (other != null && !other.equals(change.key()))) {
      add(Finding.Code.EMPTY_CUT_IN, "cut-ins", record);
    }
  }

  private void keys() {
    unique("serial-blocks", "", records.blocks(), SerialBlock::key);
    unique("changes", "", records.changes(), Change::key);
    unique("features", "", records.features(), Feature::key);
    unique("retrofits", "", records.retrofits(), Retrofit::key);
    for (Change change : records.changes()) {
      String owner = change.key() + "/";
      unique("cut-ins", owner, change.cutIns(), CutIn::variant);
      unique("change-offerings", owner, change.offering(), o -> byValue(o.value()));
    }
    List<String> citations = new ArrayList<>();
    records.entries().forEach(e -> e.citations().forEach(c -> citations.add(c.key())));
    unique("citations", "", citations, c -> c);
  }

  private static String byValue(String value) {
    return value.matches("[-+]?[0-9]+[.][0-9]+") ? value.replaceAll("[.]?0+$", "") : value;
  }

  private <T> void unique(String table, String owner, List<T> all, Function<T, String> key) {
    for (int i = 0; i < all.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (key.apply(all.get(i)).equals(key.apply(all.get(j)))) {
          add(Finding.Code.DUPLICATE_KEY, table, owner + key.apply(all.get(i)));
        }
      }
    }
  }

  /** Blocks that share a serial; named is the one that begins later. */
  private void overlaps() {
    for (SerialBlock one : records.blocks()) {
      for (SerialBlock other : records.blocks()) {
        boolean pair = one != other && one.series().equals(other.series());
        boolean allowed = one.intermixed() && other.intermixed();
        if (pair && !allowed && sound(one) && sound(other) && beginsWithin(one, other)) {
          add(Finding.Code.OVERLAPPING_BLOCKS, "serial-blocks", one.key());
        }
      }
    }
  }

  private boolean sound(SerialBlock block) {
    Series series = find(records.series(), block.series());
    Serial first = series == null ? null : SlowSerials.read(series, block.firstSerial());
    Serial last = first;
    if (series != null && block.lastSerial() != null) {
      last = SlowSerials.read(series, block.lastSerial());
    }
    return first != null && last != null && SlowSerials.order(first, last) <= 0;
  }

  private boolean beginsWithin(SerialBlock one, SerialBlock other) {
    SlowSerials serials = new SlowSerials(records);
    int starts = SlowSerials.order(serials.first(one), serials.first(other));
    if (starts != 0) {
      return serials.holds(other, serials.first(one));
    }
    int oneYear = Objects.requireNonNullElse(one.year(), Integer.MAX_VALUE);
    int otherYear = Objects.requireNonNullElse(other.year(), Integer.MAX_VALUE);
    return oneYear == otherYear ? one.key().compareTo(other.key()) > 0 : oneYear > otherYear;
  }
}
