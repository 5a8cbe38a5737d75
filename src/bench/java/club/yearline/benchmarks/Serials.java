package club.yearline.benchmarks;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Question;
import club.yearline.effectivity.SerialBlock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Serials to ask about, as they are typed. */
final class Serials {

  private static final long SEED = 7;

  private Serials() {}

  /** Two serials of every block of a variant, its first and its last, in mixed order. */
  static List<String> of(Catalogue catalogue, String variant) {
    List<String> serials = new ArrayList<>();
    for (SerialBlock block : catalogue.model(variant).orElseThrow().blocks()) {
      serials.add(block.firstSerial());
      serials.add(String.valueOf(block.lastSerial()));
    }
    Collections.shuffle(serials, new Random(SEED));
    return serials;
  }

  /** First serials of blocks picked from the whole catalogue. */
  static List<String> anywhere(Catalogue catalogue, int count) {
    List<SerialBlock> blocks = catalogue.records().blocks();
    return new Random(SEED)
        .ints(count, 0, blocks.size())
        .mapToObj(i -> blocks.get(i).firstSerial())
        .toList();
  }

  /** Where a serial lies; every serial of a block of the generated catalogue lies somewhere. */
  static Located.Found find(Catalogue catalogue, String serial) {
    Located located = catalogue.locate(new Question(null, null, serial));
    if (located instanceof Located.Found found) {
      return found;
    }
    throw new IllegalStateException(serial + " was not found: " + located);
  }
}
