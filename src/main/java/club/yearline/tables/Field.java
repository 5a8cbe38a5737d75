package club.yearline.tables;

import club.yearline.effectivity.Values;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A column of a table, and what its cells may hold.
 *
 * @param name its name in the header
 * @param description what it is, in words
 * @param type how its cells are read
 * @param required whether a cell may not be empty
 * @param pattern what a text must look like
 * @param maxLength most characters of a text
 * @param words the only texts allowed; empty where any is
 * @param minimum least number
 * @param maximum greatest number
 */
public record Field(
    String name,
    String description,
    FieldType type,
    boolean required,
    @Nullable Pattern pattern,
    @Nullable Integer maxLength,
    List<String> words,
    @Nullable BigDecimal minimum,
    @Nullable BigDecimal maximum) {

  private static final BigDecimal LARGEST = BigDecimal.valueOf(Integer.MAX_VALUE);

  /** What is wrong with a cell; empty where nothing is. */
  public Optional<Complaint> check(String cell) {
    if (cell.isEmpty()) {
      return required ? Optional.of(Complaint.of("required", description)) : Optional.empty();
    }
    if (hasControls(cell)) {
      return Optional.of(Complaint.of("control-character"));
    }
    if (!type.reads(cell)) {
      return Optional.of(Complaint.of("bad-" + type.name().toLowerCase(java.util.Locale.ROOT)));
    }
    return (type == FieldType.STRING ? checkText(cell) : checkRange(cell))
        .or(() -> checkForm(cell));
  }

  /** The one text by which equal cells of a primary key are equal. */
  String canonical(String cell) {
    if (type == FieldType.INTEGER) {
      return FieldType.whole(cell).map(BigDecimal::toPlainString).orElse(cell);
    }
    return Format.of(name) == Format.QUANTITY ? Values.canonical(cell) : cell;
  }

  private Optional<Complaint> checkText(String cell) {
    if (!words.isEmpty() && !words.contains(cell)) {
      return Optional.of(Complaint.of("bad-word", String.join(", ", words)));
    }
    if (maxLength != null && cell.codePointCount(0, cell.length()) > maxLength) {
      return Optional.of(Complaint.of("too-long", maxLength));
    }
    if (pattern != null && !pattern.matcher(cell).matches()) {
      return Optional.of(Complaint.of("bad-pattern", description, pattern));
    }
    return Optional.empty();
  }

  private Optional<Complaint> checkForm(String cell) {
    Format format = Format.of(name);
    return format.fits(cell) ? Optional.empty() : Optional.of(Complaint.of(format.complaint()));
  }

  private Optional<Complaint> checkRange(String cell) {
    if (type != FieldType.INTEGER && type != FieldType.NUMBER) {
      return Optional.empty();
    }
    BigDecimal number = new BigDecimal(cell);
    BigDecimal most = maximum == null ? LARGEST : maximum;
    boolean below = minimum != null && number.compareTo(minimum) < 0;
    if (below || number.compareTo(most) > 0 || number.compareTo(LARGEST.negate()) < 0) {
      return Optional.of(
          Complaint.of("out-of-range", minimum == null ? LARGEST.negate() : minimum, most));
    }
    return Optional.empty();
  }

  /** Characters that no database and no page takes well; tab and line ends are text. */
  private static boolean hasControls(String cell) {
    for (int i = 0; i < cell.length(); i++) {
      char c = cell.charAt(i);
      if (c < ' ' && c != '\t' && c != '\n' && c != '\r' || c == '\u007f' || c == '\ufffe') {
        return true;
      }
    }
    return false;
  }
}
