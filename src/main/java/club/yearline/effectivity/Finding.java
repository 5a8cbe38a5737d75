package club.yearline.effectivity;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something wrong or doubtful about a catalogue's records.
 *
 * @param code what it is
 * @param table the data package resource the record belongs to, such as {@code cut-ins}
 * @param record the record's primary key, parts joined by {@code /}, such as {@code
 *     door-latch-rotary/la-2b}
 * @param field the column at fault; null where the whole record is meant
 * @param value the value at fault; null where there is none
 * @param arguments what a message names: other records, the value expected
 */
public record Finding(
    Code code,
    String table,
    String record,
    @Nullable String field,
    @Nullable String value,
    List<String> arguments)
    implements Comparable<Finding> {

  public Finding {
    arguments = List.copyOf(arguments);
  }

  /** How grave a finding is. */
  public enum Level {
    /** Stops a publication. */
    ERROR,
    /** Shown, may be accepted. */
    WARNING,
    /** Shown. */
    NOTE;

    private final String code = Codes.of(this);

    /** The word used in files, addresses and the API. */
    public String code() {
      return code;
    }
  }

  /** What a finding says, as domain section 6 lists them. */
  public enum Code {
    OVERLAPPING_BLOCKS(Level.ERROR),
    UNKNOWN_REFERENCE(Level.ERROR),
    VALUE_OF_OTHER_FEATURE(Level.ERROR),
    REVERSED_WINDOW(Level.ERROR),
    DUPLICATE_KEY(Level.ERROR),
    UNREADABLE_SERIAL(Level.ERROR),
    EMPTY_CUT_IN(Level.ERROR),
    EMPTY_OFFERING(Level.ERROR),
    SERIES_OF_OTHER_FAMILY(Level.ERROR),
    VARIANT_WITHOUT_RUN(Level.WARNING),
    TAKE_RATE_MISUSED(Level.WARNING),
    AXES_DISAGREE(Level.WARNING),
    OUTSIDE_PRODUCTION(Level.WARNING),
    WINDOWS_OVERLAP(Level.WARNING),
    NO_BASELINE(Level.WARNING),
    CHANGES_NOTHING(Level.WARNING),
    UNSOURCED(Level.WARNING),
    GAP_IN_BLOCKS(Level.NOTE);

    private final Level level;
    private final String code = Codes.of(this);

    Code(Level level) {
      this.level = level;
    }

    /** How grave it is. */
    public Level level() {
      return level;
    }

    /** The word used in files, addresses and the API. */
    public String code() {
      return code;
    }
  }

  /** Whether it stops a publication. */
  public boolean isError() {
    return code.level() == Level.ERROR;
  }

  @Override
  public int compareTo(Finding other) {
    int byCode = code.compareTo(other.code);
    if (byCode != 0) {
      return byCode;
    }
    int byTable = table.compareTo(other.table);
    return byTable != 0 ? byTable : record.compareTo(other.record);
  }
}
