package club.yearline.effectivity;

import club.yearline.citation.Citation;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A set of serial numbers counted in one order.
 *
 * @param key stable key
 * @param family key of its family
 * @param prefix text before the counting digits, as stamped; null or empty for none
 * @param digits digits to show, with leading zeros; null: as many as there are
 * @param yearSuffix whether a separator and a year follow the counting digits and do not count
 * @param note plain text
 * @param citations its citations
 */
public record Series(
    String key,
    String family,
    @Nullable String prefix,
    @Nullable Integer digits,
    boolean yearSuffix,
    @Nullable String note,
    List<Citation> citations)
    implements Entry {

  public Series {
    citations = List.copyOf(citations);
  }

  @Override
  public EntryKind kind() {
    return EntryKind.SERIES;
  }

  /** Reads a text as a serial of this series; empty where it does not belong to it. */
  public Optional<Serial> read(SerialText text) {
    return SerialReader.read(this, text);
  }

  /**
   * Reads a text as a serial of this series; empty where it does not belong to it.
   *
   * @throws IllegalArgumentException if it has more than {@value SerialText#MAX_LENGTH} characters
   */
  public Optional<Serial> read(String text) {
    return read(SerialText.of(text));
  }

  /** The serial as stamped: prefix, ordinal padded to {@link #digits}, suffix. */
  public String show(Serial serial) {
    String number = Long.toString(serial.ordinal());
    StringBuilder out = new StringBuilder(prefix == null ? "" : prefix);
    for (int i = number.length(); digits != null && i < digits; i++) {
      out.append('0');
    }
    out.append(number);
    return serial.suffix() == Serial.NO_SUFFIX
        ? out.toString()
        : out.append(serial.suffix()).toString();
  }

  /** The prefix in the form in which prefixes are matched. */
  String barePrefix() {
    return prefix == null ? "" : SerialText.of(prefix).bare();
  }
}
