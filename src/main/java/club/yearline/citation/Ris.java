package club.yearline.citation;

import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import org.jspecify.annotations.Nullable;

/**
 * Writes references as RIS, in UTF-8. The format has no escapes: a line holds a value to its end,
 * so line breaks become spaces; and a comma in an author's name parts family from given, so an
 * organisation loses its commas. The tags are from memory; tests read them back.
 */
public final class Ris {

  private static final String END = "\r\n";
  private static final int MONTH = 2;
  private static final int DAY = 3;

  private final StringBuilder out = new StringBuilder();

  private Ris() {}

  /** One reference. */
  public static String write(Reference reference) {
    Ris ris = new Ris();
    ris.line("TY", reference.type().ris());
    ris.line("ID", reference.id());
    ris.line("TI", reference.title());
    reference.authors().forEach(name -> ris.line("AU", author(name)));
    ris.line("T2", reference.container());
    ris.line("PB", reference.publisher());
    ris.number(reference);
    ris.dates(reference);
    ris.line("UR", reference.url());
    ris.line("M3", reference.type().genre().isEmpty() ? null : reference.type().genre());
    ris.out.append("ER  - ").append(END);
    return ris.out.toString();
  }

  private void number(Reference reference) {
    Matcher volume = reference.volume();
    if (volume.matches()) {
      line("VL", volume.group(1));
      line("IS", volume.group(2));
    } else {
      line("M1", reference.number());
    }
  }

  private void dates(Reference reference) {
    Issued issued = reference.issued();
    if (issued != null && issued.first().isEmpty()) {
      line("DA", "///" + issued.say());
    } else if (issued != null) {
      line("PY", issued.first().get(0).toString());
      line("DA", date(issued.first(), issued.last().isEmpty() ? "" : "to " + issued.last().get(0)));
    }
    LocalDate read = reference.accessed();
    if (read != null) {
      line("Y2", date(Issued.on(read).first(), ""));
    }
  }

  private static String date(List<Integer> parts, String rest) {
    return parts.get(0)
        + "/"
        + (parts.size() < MONTH ? "" : "%02d".formatted(parts.get(1)))
        + "/"
        + (parts.size() < DAY ? "" : "%02d".formatted(parts.get(2)))
        + "/"
        + rest;
  }

  private static String author(Name name) {
    String given = name.given();
    return given == null ? name.family().replace(",", "") : name.family() + ", " + given;
  }

  private void line(String tag, @Nullable String value) {
    if (value != null) {
      out.append(tag).append("  - ");
      out.append(value.replaceAll("[\\s\\p{Cntrl}]+", " ").strip()).append(END);
    }
  }
}
