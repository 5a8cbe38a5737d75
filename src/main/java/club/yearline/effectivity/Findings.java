package club.yearline.effectivity;

import java.util.List;

/** Checks the consistency of a catalogue's records (domain section 6). */
public final class Findings {

  private Findings() {}

  /** Everything wrong or doubtful about the records, gravest first, in a stable order. */
  public static List<Finding> in(Records records) {
    return List.of();
  }
}
