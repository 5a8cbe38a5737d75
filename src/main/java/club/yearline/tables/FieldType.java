package club.yearline.tables;

import club.yearline.effectivity.Values;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** The Table Schema types that the format uses, and how their cells are read. */
public enum FieldType {
  STRING {
    @Override
    boolean reads(String cell) {
      return true;
    }
  },
  INTEGER {
    @Override
    boolean reads(String cell) {
      return whole(cell).isPresent();
    }
  },
  NUMBER {
    @Override
    boolean reads(String cell) {
      return Values.number(cell).isPresent();
    }
  },
  BOOLEAN {
    @Override
    boolean reads(String cell) {
      return TRUE.contains(cell) || FALSE.contains(cell);
    }
  },
  DATE {
    @Override
    boolean reads(String cell) {
      return day(cell).isPresent();
    }
  };

  private static final Set<String> TRUE = Set.of("true", "True", "TRUE", "1");
  private static final Set<String> FALSE = Set.of("false", "False", "FALSE", "0");
  private static final Pattern WHOLE = Pattern.compile("[+-]?[0-9]{1,18}");
  private static final int DAY_LENGTH = 10;

  /** Whether a cell that is not empty can be read as this type. */
  abstract boolean reads(String cell);

  static boolean isTrue(String cell) {
    return TRUE.contains(cell);
  }

  static Optional<BigDecimal> whole(String cell) {
    return WHOLE.matcher(cell).matches() ? Optional.of(new BigDecimal(cell)) : Optional.empty();
  }

  static Optional<LocalDate> day(String cell) {
    if (cell.length() != DAY_LENGTH) {
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDate.parse(cell));
    } catch (DateTimeParseException notADay) {
      return Optional.empty();
    }
  }
}
