package club.yearline.citation;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Who made a work: a person, or an organisation.
 *
 * @param family a person's family name; an organisation's whole name
 * @param given a person's given names; null for an organisation
 */
public record Name(String family, @Nullable String given) {

  /** An organisation. */
  public static Name organisation(String name) {
    return new Name(name, null);
  }

  /** Reads "family, given", several parted by semicolons; without a comma, an organisation. */
  public static List<Name> read(@Nullable String authors) {
    return authors == null
        ? List.of()
        : Arrays.stream(authors.split(";"))
            .map(String::strip)
            .filter(text -> !text.isEmpty())
            .map(Name::one)
            .toList();
  }

  private static Name one(String text) {
    int comma = text.indexOf(',');
    String family = comma < 0 ? text : text.substring(0, comma).strip();
    String given = comma < 0 ? "" : text.substring(comma + 1).strip();
    return given.isEmpty() || family.isEmpty() ? organisation(text) : new Name(family, given);
  }

  /** Whether it is an organisation's, never to be taken apart. */
  public boolean isOrganisation() {
    return given == null;
  }
}
