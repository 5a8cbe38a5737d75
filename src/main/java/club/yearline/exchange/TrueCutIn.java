package club.yearline.exchange;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Serial;
import club.yearline.effectivity.Series;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * Where a change of the demo catalogue truly cut in, as {@code demo/true-cut-ins.csv} states it.
 *
 * @param change key of the change
 * @param variant key of the variant
 * @param feature the feature
 * @param series the series of the serials
 * @param first the serial from which on the new one left the factory
 * @param settled the serial from which on only the new one did
 * @param old the value before
 * @param fresh the value after
 * @param exchanged serials of airframes that show the other value, because the part was exchanged
 */
record TrueCutIn(
    String change,
    String variant,
    Feature feature,
    Series series,
    Serial first,
    Serial settled,
    String old,
    String fresh,
    Set<Serial> exchanged) {

  private static final String TABLE = "/demo/true-cut-ins.csv";

  /** All that are stated, read against the demo catalogue. */
  static List<TrueCutIn> all(Catalogue catalogue) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    List<TrueCutIn> all = new ArrayList<>();
    try (InputStream in = Objects.requireNonNull(TrueCutIn.class.getResourceAsStream(TABLE));
        InputStreamReader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      for (CSVRecord row : format.parse(reader)) {
        all.add(read(row, catalogue));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return all;
  }

  private static TrueCutIn read(CSVRecord row, Catalogue catalogue) {
    Change change = catalogue.change(row.get("change")).orElseThrow();
    String variant = row.get("variant");
    String firstText = row.get("first");
    Series series =
        catalogue.read(firstText).stream()
            .filter(m -> m.blocks().stream().anyMatch(b -> b.variant().equals(variant)))
            .findFirst()
            .orElseThrow()
            .series();
    return new TrueCutIn(
        change.key(),
        variant,
        catalogue.feature(change.feature()).orElseThrow(),
        series,
        series.read(firstText).orElseThrow(),
        series.read(row.get("settled")).orElseThrow(),
        standard(before(change, variant, catalogue)),
        standard(change),
        Arrays.stream(row.get("exchanged").split(" "))
            .filter(s -> !s.isEmpty())
            .map(s -> series.read(s).orElseThrow())
            .collect(Collectors.toSet()));
  }

  private static Change before(Change change, String variant, Catalogue catalogue) {
    List<Change> inOrder =
        catalogue.model(variant).orElseThrow().timeline(change.feature()).orElseThrow().changes();
    return inOrder.get(inOrder.indexOf(change) - 1);
  }

  private static String standard(Change change) {
    return change.offering().stream()
        .filter(o -> o.fit() == Fit.STANDARD)
        .map(Offered::value)
        .findFirst()
        .orElseThrow();
  }

  /** What an airframe left the factory with; inside the window either. */
  String made(Serial serial, boolean freshInside) {
    if (serial.compareTo(first) < 0) {
      return old;
    }
    return serial.compareTo(settled) >= 0 || freshInside ? fresh : old;
  }

  /** The other of the two values. */
  String other(String value) {
    return value.equals(old) ? fresh : old;
  }
}
