package club.yearline.effectivity;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.BiConsumer;

/** Enumerates a variant's production in segments. */
final class Segments {

  private Segments() {}

  /**
   * The segments of a variant's production: first its years without blocks, then its blocks cut
   * where told, by series and serial.
   *
   * @param addCuts adds the serials of a series at which to cut
   */
  static List<Segment> of(VariantModel model, BiConsumer<Series, TreeSet<Serial>> addCuts) {
    List<Segment> segments = new ArrayList<>();
    Production production = model.production();
    for (int year : production.sharedYears()) {
      if (production.blocksOf(year).isEmpty()) {
        segments.add(new Segment(Position.of(model.variant(), year), null));
      }
    }
    for (Block block : production.blocks()) {
      TreeSet<Serial> cuts = new TreeSet<>();
      addCuts.accept(block.series(), cuts);
      cuts.add(block.end());
      Serial from = block.first();
      for (Serial to : cuts.subSet(from, false, block.end(), true)) {
        Position position = Position.of(model.variant(), block.year(), block.series(), from);
        segments.add(new Segment(position, to));
        from = to;
      }
    }
    return segments;
  }
}
