package club.yearline.browse;

import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Serial;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.Variant;
import club.yearline.effectivity.VariantModel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The serial blocks of a variant, in the order of their serials, with the gaps between them. */
record BlockTable(
    VariantModel model, Catalogue catalogue, Words words, Wording wording, Links links) {

  /**
   * A block or a gap.
   *
   * @param year its year; "not known" where nobody knows
   * @param href the expected configuration of that year; null without one
   * @param gap whether these serials belong to no block
   * @param count the serials in it, as a number
   * @param key key of the block; null for a gap
   */
  record Row(
      String year,
      @Nullable String href,
      String serials,
      String count,
      String note,
      boolean gap,
      @Nullable String key) {}

  List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    for (Series series : catalogue.seriesOf(model.family().key())) {
      if (model.blocks().stream().anyMatch(b -> b.series().equals(series.key()))) {
        addSeries(series, rows);
      }
    }
    return rows;
  }

  private void addSeries(Series series, List<Row> rows) {
    List<SerialBlock> all = blocksOf(series);
    Serial reached = null;
    SerialBlock before = null;
    for (SerialBlock block : all) {
      Serial first = SerialRange.read(series, block.firstSerial());
      boolean beside = isOwn(block) || (before != null && isOwn(before));
      if (beside && reached != null && first.ordinal() > reached.ordinal() + 1) {
        rows.add(gap(series, reached.ordinal() + 1, first.ordinal() - 1));
      }
      if (isOwn(block)) {
        rows.add(row(series, block, all));
      }
      Serial last = SerialRange.last(series, block);
      if (reached == null || reached.compareTo(last) < 0) {
        reached = last;
        before = block;
      }
    }
  }

  /** The blocks of a series, of all variants of the family, by serial. */
  private List<SerialBlock> blocksOf(Series series) {
    return catalogue.variantsOf(model.family().key()).stream()
        .flatMap(v -> catalogue.model(v.key()).orElseThrow().blocks().stream())
        .filter(b -> b.series().equals(series.key()))
        .sorted(
            Comparator.comparing((SerialBlock b) -> SerialRange.read(series, b.firstSerial()))
                .thenComparing(b -> SerialRange.last(series, b))
                .thenComparing(SerialBlock::key))
        .toList();
  }

  private boolean isOwn(SerialBlock block) {
    return block.variant().equals(model.variant().key());
  }

  private Row gap(Series series, long first, long last) {
    String serials = wording.range(series.show(Serial.of(first)), series.show(Serial.of(last)));
    return new Row(
        words.say("block.gap-year"),
        null,
        serials,
        "" + (last - first + 1),
        words.say("block.gap"),
        true,
        null);
  }

  private Row row(Series series, SerialBlock block, List<SerialBlock> all) {
    Integer year = block.year();
    return new Row(
        year == null ? words.say("block.no-year") : "" + year,
        year == null ? null : links.expected(block.variant(), year, null),
        SerialRange.of(block, words, wording),
        block.lastSerial() == null ? "" : "" + size(series, block),
        block.intermixed() ? shared(series, block, all) : "",
        false,
        block.key());
  }

  private static long size(Series series, SerialBlock block) {
    return SerialRange.last(series, block).ordinal()
        - SerialRange.read(series, block.firstSerial()).ordinal()
        + 1;
  }

  /** With which variants the block shares its serials. */
  private String shared(Series series, SerialBlock block, List<SerialBlock> all) {
    String others =
        all.stream()
            .filter(o -> o != block && o.intermixed() && overlap(series, o, block))
            .flatMap(o -> catalogue.variant(o.variant()).stream())
            .map(Variant::designation)
            .distinct()
            .collect(Collectors.joining(", "));
    return others.isEmpty() ? "" : words.say("block.intermixed", others);
  }

  private static boolean overlap(Series series, SerialBlock one, SerialBlock other) {
    return begins(series, one).compareTo(SerialRange.last(series, other)) <= 0
        && begins(series, other).compareTo(SerialRange.last(series, one)) <= 0;
  }

  private static Serial begins(Series series, SerialBlock block) {
    return SerialRange.read(series, block.firstSerial());
  }
}
