package club.yearline.exchange;

import club.yearline.effectivity.Records;
import java.nio.file.Path;

/** The demo's catalogue, for tests of other modules. */
public final class DemoRecords {

  private DemoRecords() {}

  /** The records of the committed demo. */
  public static Records read() {
    return Asking.records(Path.of("seed-data/demo"));
  }
}
