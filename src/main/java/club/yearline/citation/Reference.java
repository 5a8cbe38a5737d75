package club.yearline.citation;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * One work as bibliographies list it; what all formats are made from.
 *
 * @param id names it within a list
 * @param type what it is
 * @param title its title
 * @param container what it appeared in: a periodical, a site
 * @param authors who made it, in order
 * @param publisher who published it
 * @param number its own number, or where in a periodical it stands
 * @param issued when it was published
 * @param url where it is read
 * @param accessed when it was read there
 */
public record Reference(
    String id,
    WorkType type,
    String title,
    @Nullable String container,
    List<Name> authors,
    @Nullable String publisher,
    @Nullable String number,
    @Nullable Issued issued,
    @Nullable String url,
    @Nullable LocalDate accessed) {

  private static final Pattern VOLUME = Pattern.compile("vol\\. (\\w+)(?:, no\\. (\\w+))?");

  public Reference {
    authors = List.copyOf(authors);
  }

  /** A page of a catalogue of ours, as read on a day. */
  public static Reference page(
      String id,
      String title,
      String site,
      List<Name> authors,
      LocalDate published,
      String url,
      LocalDate read) {
    return new Reference(
        id, WorkType.PAGE, title, site, authors, null, null, Issued.on(published), url, read);
  }

  /** A source. What no person is named for, its publisher has made. */
  public static Reference of(Source source) {
    WorkType type = WorkType.of(source.kind());
    String publisher = source.publisher();
    boolean appearedIn = type == WorkType.ARTICLE;
    List<Name> authors = Name.read(source.author());
    boolean made = authors.isEmpty();
    if (made && publisher != null) {
      authors = List.of(Name.organisation(publisher));
    }
    return new Reference(
        source.key(),
        type,
        source.title(),
        appearedIn ? publisher : null,
        authors,
        appearedIn || made ? null : publisher,
        source.identifier(),
        Issued.read(source.issued()),
        source.url(),
        source.accessed());
  }

  /** Volume and issue of a periodical, where its number names them. */
  Matcher volume() {
    return VOLUME.matcher(type == WorkType.ARTICLE && number != null ? number : "");
  }

  /** The work as an item of CSL data, ready to be written as JSON. */
  public Map<String, Object> csl() {
    Map<String, Object> item = new LinkedHashMap<>();
    item.put("id", id);
    item.put("type", type.csl());
    put(item, "title", title);
    put(item, "container-title", container);
    if (!authors.isEmpty()) {
      item.put("author", authors.stream().map(Reference::csl).toList());
    }
    put(item, "publisher", publisher);
    put(item, "genre", type.genre().isEmpty() ? null : type.genre());
    putNumber(item);
    if (issued != null) {
      item.put("issued", issued.csl());
    }
    put(item, "URL", url);
    if (accessed != null) {
      item.put("accessed", Issued.on(accessed).csl());
    }
    return item;
  }

  private void putNumber(Map<String, Object> item) {
    Matcher volume = volume();
    if (volume.matches()) {
      put(item, "volume", volume.group(1));
      put(item, "issue", volume.group(2));
    } else {
      put(item, "number", number);
    }
  }

  private static void put(Map<String, Object> item, String name, @Nullable String value) {
    if (value != null) {
      item.put(name, value);
    }
  }

  private static Map<String, Object> csl(Name name) {
    Map<String, Object> parts = new LinkedHashMap<>();
    if (name.isOrganisation()) {
      parts.put("literal", name.family());
    } else {
      put(parts, "family", name.family());
      put(parts, "given", name.given());
    }
    return parts;
  }
}
