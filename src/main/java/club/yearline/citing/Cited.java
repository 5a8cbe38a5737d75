package club.yearline.citing;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A citation as a style writes it; without runs where the style lists no such work.
 *
 * @param runs its text, cut where the face changes
 */
public record Cited(List<Run> runs) {

  /** A piece of text in one face. */
  public record Run(String text, boolean italic) {}

  public Cited {
    runs = List.copyOf(runs);
  }

  /** Whether the style has nothing to say of it. */
  public boolean isEmpty() {
    return runs.isEmpty();
  }

  /** The text alone, to be copied. */
  public String text() {
    return runs.stream().map(Run::text).collect(Collectors.joining());
  }
}
