package club.yearline.citation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Writes references as BibTeX, in UTF-8. Braces are written as commands: BibTeX counts them even
 * behind a backslash, so that a lone one would end the entry, or never end it.
 */
public final class BibTex {

  private static final int MONTH = 2;

  private BibTex() {}

  /** One entry. */
  public static String write(Reference reference) {
    String fields =
        fields(reference).entrySet().stream()
            .map(field -> "  " + field.getKey() + " = {" + field.getValue() + "}")
            .collect(Collectors.joining(",\n"));
    return "@" + reference.type().bibtex() + "{" + key(reference.id()) + ",\n" + fields + "\n}\n";
  }

  private static Map<String, String> fields(Reference reference) {
    Map<String, String> fields = new LinkedHashMap<>();
    // A second pair of braces keeps the capitals of designations.
    fields.put("title", "{" + escaped(reference.title()) + "}");
    put(fields, "author", authors(reference.authors()));
    boolean article = reference.type() == WorkType.ARTICLE;
    put(fields, article ? "journal" : "howpublished", text(reference.container()));
    put(fields, publisherField(reference.type()), text(publisher(reference)));
    putNumber(fields, reference);
    putDate(fields, reference.issued());
    put(fields, "url", reference.url() == null ? null : url(reference.url()));
    if (reference.accessed() != null) {
      fields.put("urldate", reference.accessed().toString());
    }
    put(
        fields,
        reference.type().bibtex().equals("unpublished") ? "note" : "type",
        genre(reference));
    return fields;
  }

  private static @Nullable String genre(Reference reference) {
    return reference.type().genre().isEmpty() ? null : escaped(reference.type().genre());
  }

  /** A technical report needs its institution, even where that is its author. */
  private static @Nullable String publisher(Reference reference) {
    boolean needed = reference.type().bibtex().equals("techreport");
    return reference.publisher() == null && needed && !reference.authors().isEmpty()
        ? reference.authors().get(0).family()
        : reference.publisher();
  }

  private static String publisherField(WorkType type) {
    return switch (type.bibtex()) {
      case "techreport" -> "institution";
      case "manual" -> "organization";
      case "booklet" -> "howpublished";
      default -> "publisher";
    };
  }

  private static void putNumber(Map<String, String> fields, Reference reference) {
    Matcher volume = reference.volume();
    if (volume.matches()) {
      put(fields, "volume", text(volume.group(1)));
      put(fields, "number", text(volume.group(2)));
    } else {
      put(fields, "number", text(reference.number()));
    }
  }

  private static void putDate(Map<String, String> fields, @Nullable Issued issued) {
    if (issued == null) {
      return;
    }
    fields.put("year", escaped(issued.say()));
    if (issued.last().isEmpty() && issued.first().size() >= MONTH) {
      fields.put("month", issued.first().get(1).toString());
    }
  }

  private static @Nullable String authors(List<Name> authors) {
    return authors.isEmpty()
        ? null
        : authors.stream().map(BibTex::author).collect(Collectors.joining(" and "));
  }

  private static String author(Name name) {
    String given = name.given();
    return given == null
        ? "{" + escaped(name.family()) + "}"
        : whole(name.family()) + ", " + whole(given);
  }

  /** The word "and" parts authors, unless braces hold it. */
  private static String whole(String part) {
    return part.matches(".*(?i)\\band\\b.*|.*,.*") ? "{" + escaped(part) + "}" : escaped(part);
  }

  private static @Nullable String text(@Nullable String value) {
    return value == null ? null : escaped(value);
  }

  /** An address is taken as it stands; what would hurt in it has its percent code. */
  private static String url(String url) {
    return url.replace("{", "%7B").replace("}", "%7D").replaceAll("[\\s\\p{Cntrl}\\\\]+", "");
  }

  private static void put(Map<String, String> fields, String name, @Nullable String value) {
    if (value != null) {
      fields.put(name, value);
    }
  }

  private static String key(String id) {
    return id.replaceAll("[^A-Za-z0-9:_-]+", "-");
  }

  private static String escaped(String text) {
    StringBuilder out = new StringBuilder();
    text.replaceAll("[\\s\\p{Cntrl}]+", " ").strip().codePoints().forEach(c -> escape(c, out));
    return out.toString();
  }

  private static void escape(int c, StringBuilder out) {
    switch (c) {
      case '\\' -> out.append("{\\textbackslash}");
      case '{' -> out.append("{\\textbraceleft}");
      case '}' -> out.append("{\\textbraceright}");
      case '~' -> out.append("{\\textasciitilde}");
      case '^' -> out.append("{\\textasciicircum}");
      case '&', '%', '$', '#', '_' -> out.append('\\').appendCodePoint(c);
      default -> out.appendCodePoint(c);
    }
  }
}
