package club.yearline.news;

import java.io.ByteArrayInputStream;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * What RFC 4287 (The Atom Syndication Format) demands of a feed document, as far as it applies to
 * elements that we write: the statements with MUST and MUST NOT in the sections named beside each,
 * and the grammar's closed sets of elements and attributes. Source: RFC 4287, read in Debian's
 * package doc-rfc-std-proposed. The standard's grammar itself is run by {@link AtomGrammar}.
 */
final class AtomRules {

  private static final String ATOM = "http://www.w3.org/2005/Atom";

  private static final Set<String> OF_FEED =
      Set.of(
          "author",
          "category",
          "contributor",
          "generator",
          "icon",
          "id",
          "link",
          "logo",
          "rights",
          "subtitle",
          "title",
          "updated",
          "entry");
  private static final Set<String> OF_ENTRY =
      Set.of(
          "author",
          "category",
          "content",
          "contributor",
          "id",
          "link",
          "published",
          "rights",
          "source",
          "summary",
          "title",
          "updated");

  /** RFC 3339 date-time with the capitals that section 3.3 demands. */
  private static final Pattern DATE =
      Pattern.compile("\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}:\\d{2}(\\.\\d+)?(Z|[+-]\\d{2}:\\d{2})");

  private static final Pattern MEDIA_TYPE = Pattern.compile("[\\w.+-]+/[\\w.+-]+");

  private final List<String> broken = new ArrayList<>();

  private AtomRules() {}

  /** The rules that a document breaks, each with its section; none where it is valid. */
  static List<String> brokenBy(String document) {
    AtomRules rules = new AtomRules();
    Element feed = parsed(document);
    rules.check(ATOM.equals(feed.getNamespaceURI()), "1.2 the namespace is Atom's");
    rules.check(feed.getLocalName().equals("feed"), "2 the document element is atom:feed");
    rules.feed(feed);
    return rules.broken;
  }

  /** The children of an element with a name. */
  static List<Element> children(Element of, String name) {
    return elements(of).filter(e -> name.equals(e.getLocalName())).toList();
  }

  static Element parsed(String document) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setNamespaceAware(true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      return factory
          .newDocumentBuilder()
          .parse(new ByteArrayInputStream(document.getBytes(StandardCharsets.UTF_8)))
          .getDocumentElement();
    } catch (Exception e) {
      throw new AssertionError("2 not well-formed XML: " + e.getMessage(), e);
    }
  }

  private void feed(Element feed) {
    closed(feed, OF_FEED, "4.1.1");
    once(feed, "id", "4.1.1");
    once(feed, "title", "4.1.1");
    once(feed, "updated", "4.1.1");
    for (String name : List.of("generator", "icon", "logo", "rights", "subtitle")) {
      atMostOnce(feed, name, "4.1.1");
    }
    List<Element> entries = children(feed, "entry");
    boolean all = entries.stream().noneMatch(e -> children(e, "author").isEmpty());
    boolean own = !children(feed, "author").isEmpty();
    check(own || (all && !entries.isEmpty()), "4.1.1 an author of the feed, or of every entry");
    check(
        children(feed, "link").stream().anyMatch(l -> l.getAttribute("rel").equals("self")),
        "4.1.1 (should) a link to itself");
    metadataFirst(feed);
    common(feed, "4.1.1");
    entries.forEach(entry -> entry(entry, own));
    Set<String> ids = new HashSet<>();
    entries.forEach(e -> check(ids.add(text(e, "id")), "4.1.1 one entry for each id"));
  }

  private void metadataFirst(Element feed) {
    boolean entries = false;
    for (Element child : elements(feed).toList()) {
      boolean entry = child.getLocalName().equals("entry");
      check(entry || !entries, "4.1.1 entries follow the metadata");
      entries |= entry;
    }
  }

  private void entry(Element entry, boolean feedHasAuthor) {
    closed(entry, OF_ENTRY, "4.1.2");
    once(entry, "id", "4.1.2");
    once(entry, "title", "4.1.2");
    once(entry, "updated", "4.1.2");
    for (String name : List.of("content", "published", "rights", "source", "summary")) {
      atMostOnce(entry, name, "4.1.2");
    }
    check(
        feedHasAuthor || !children(entry, "author").isEmpty(),
        "4.1.2 an author, or one of the feed");
    check(
        !children(entry, "content").isEmpty()
            || children(entry, "link").stream().anyMatch(AtomRules::isAlternate),
        "4.1.2 an alternate link where there is no content");
    check(!text(entry, "title").isBlank(), "4.1.1.1 (advice) a title that is not empty");
    common(entry, "4.1.2");
  }

  private void common(Element of, String section) {
    Set<String> alternates = new HashSet<>();
    for (Element link : children(of, "link")) {
      link(link);
      check(
          !isAlternate(link)
              || alternates.add(link.getAttribute("type") + " " + link.getAttribute("hreflang")),
          section + " one alternate link for each type and language");
    }
    for (String name : List.of("title", "subtitle", "summary", "rights")) {
      children(of, name).forEach(this::textConstruct);
    }
    for (String name : List.of("author", "contributor")) {
      children(of, name).forEach(this::person);
    }
    for (String name : List.of("updated", "published")) {
      children(of, name).forEach(this::date);
    }
    children(of, "id").forEach(id -> check(isIri(id.getTextContent()), "4.2.6 an id is an IRI"));
  }

  private void link(Element link) {
    check(link.hasAttribute("href"), "4.2.7.1 a link has an address");
    check(isReference(link.getAttribute("href")), "4.2.7.1 a link's address is an IRI reference");
    check(
        !link.hasAttribute("rel") || link.getAttribute("rel").matches("[a-z]+|[a-z]+:\\S+"),
        "4.2.7.2 a relation is a name or an IRI");
    check(
        !link.hasAttribute("type") || MEDIA_TYPE.matcher(link.getAttribute("type")).matches(),
        "4.2.7.3 a link's type is a media type");
  }

  private void textConstruct(Element text) {
    String type = text.getAttribute("type");
    check(
        type.isEmpty() || Set.of("text", "html", "xhtml").contains(type),
        "3.1.1 the type of a text is text, html or xhtml");
    check(
        type.equals("xhtml") || elements(text).findAny().isEmpty(),
        "3.1.1.1 plain text has no child elements");
  }

  private void person(Element person) {
    closed(person, Set.of("name", "uri", "email"), "3.2");
    once(person, "name", "3.2.1");
    atMostOnce(person, "uri", "3.2.2");
    atMostOnce(person, "email", "3.2.3");
  }

  private void date(Element date) {
    check(DATE.matcher(date.getTextContent()).matches(), "3.3 a date is an RFC 3339 date-time");
  }

  private void closed(Element of, Set<String> known, String section) {
    check(
        elements(of)
            .filter(e -> ATOM.equals(e.getNamespaceURI()))
            .allMatch(e -> known.contains(e.getLocalName())),
        section + " only children that the grammar knows");
  }

  private void once(Element of, String name, String section) {
    check(children(of, name).size() == 1, section + " exactly one " + name);
  }

  private void atMostOnce(Element of, String name, String section) {
    check(children(of, name).size() <= 1, section + " at most one " + name);
  }

  private void check(boolean kept, String rule) {
    if (!kept) {
      broken.add(rule);
    }
  }

  /** Section 4.2.7.2: a link without a relation is an alternate one. */
  private static boolean isAlternate(Element link) {
    return !link.hasAttribute("rel") || link.getAttribute("rel").equals("alternate");
  }

  private static String text(Element of, String name) {
    return children(of, name).stream().findFirst().map(Node::getTextContent).orElse("");
  }

  /** Ours are URIs, which are IRIs too (section 1.3 of the standard's notational conventions). */
  private static boolean isIri(String text) {
    try {
      return new URI(text).isAbsolute();
    } catch (URISyntaxException e) {
      return false;
    }
  }

  private static boolean isReference(String text) {
    try {
      return !text.isEmpty() && new URI(text).getPath() != null;
    } catch (URISyntaxException e) {
      return false;
    }
  }

  private static Stream<Element> elements(Element of) {
    NodeList nodes = of.getChildNodes();
    return IntStream.range(0, nodes.getLength())
        .mapToObj(nodes::item)
        .filter(Element.class::isInstance)
        .map(Element.class::cast);
  }
}
