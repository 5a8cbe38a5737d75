package club.yearline.citation;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A date as sources give them: EDTF level 0 and 1 (ISO 8601-2), from {@code 1966-04-12} over {@code
 * 196X}, {@code 1966?} and {@code 1966-23} to {@code 1965/1967} and {@code 1966/..}. Keeps its
 * text, and the earliest and latest day that it may mean.
 */
public final class Edtf {

  private final String text;
  private final @Nullable LocalDate earliest;
  private final @Nullable LocalDate latest;

  Edtf(String text, @Nullable LocalDate earliest, @Nullable LocalDate latest) {
    this.text = text;
    this.earliest = earliest;
    this.latest = latest;
  }

  /**
   * Reads a text as an EDTF level 0 or 1 date.
   *
   * @throws IllegalArgumentException if it is none; the message says what is wrong with it
   */
  public static Edtf parse(String text) {
    return EdtfParser.parse(text);
  }

  /** Reads a text as an EDTF level 0 or 1 date; empty if it is none. */
  public static Optional<Edtf> read(String text) {
    try {
      return Optional.of(parse(text));
    } catch (IllegalArgumentException notADate) {
      return Optional.empty();
    }
  }

  /**
   * The earliest day it may mean; empty where its start is open or unknown. What is marked
   * uncertain or approximate counts as written; a season may be any part of its year, as the
   * standard does not say on which hemisphere.
   */
  public Optional<LocalDate> earliest() {
    return Optional.ofNullable(earliest);
  }

  /** The latest day it may mean; empty where its end is open or unknown. */
  public Optional<LocalDate> latest() {
    return Optional.ofNullable(latest);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Edtf that && text.equals(that.text);
  }

  @Override
  public int hashCode() {
    return text.hashCode();
  }

  /** The date as given. */
  @Override
  public String toString() {
    return text;
  }
}
