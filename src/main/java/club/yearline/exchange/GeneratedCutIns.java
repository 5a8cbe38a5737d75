package club.yearline.exchange;

import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Variant;
import java.util.List;
import java.util.Random;

/** Invents cut-ins of every kind, at places that lie within the variant's production. */
final class GeneratedCutIns {

  private static final int KINDS = 7;

  private final List<SerialBlock> blocks;
  private final Random random;

  GeneratedCutIns(List<SerialBlock> blocks, Random random) {
    this.blocks = blocks;
    this.random = random;
  }

  /** A cut-in of one of seven kinds, somewhere after the variant's first year. */
  CutIn make(Variant variant, int kind) {
    List<SerialBlock> own = blocks.stream().filter(b -> b.variant().equals(variant.key())).toList();
    int at = 1 + random.nextInt(own.size() - 1);
    SerialBlock first = own.get(at);
    SerialBlock settled = own.get(Math.min(at + random.nextInt(3), own.size() - 1));
    return of(variant.key(), kind % KINDS, first, settled);
  }

  private static CutIn of(String variant, int kind, SerialBlock first, SerialBlock settled) {
    Integer year = first.year();
    Integer settledYear = settled.year();
    String series = first.series();
    String serial = first.firstSerial();
    String settledSerial = settled.firstSerial();
    return switch (kind) {
      case 0 -> new CutIn(variant, false, year, year, null, null, null);
      case 1 -> new CutIn(variant, false, year, settledYear, null, null, null);
      case 2 -> new CutIn(variant, false, null, null, series, serial, serial);
      case 3 -> new CutIn(variant, false, null, null, series, serial, settledSerial);
      case 4 -> new CutIn(variant, false, year, settledYear, series, serial, settledSerial);
      case 5 -> new CutIn(variant, false, year, null, null, null, null);
      default -> new CutIn(variant, false, null, null, series, null, settledSerial);
    };
  }
}
