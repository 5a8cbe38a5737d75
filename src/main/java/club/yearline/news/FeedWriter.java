package club.yearline.news;

import club.yearline.catalog.Revision;
import club.yearline.web.Phrases;
import com.rometools.rome.feed.atom.Content;
import com.rometools.rome.feed.atom.Entry;
import com.rometools.rome.feed.atom.Feed;
import com.rometools.rome.feed.atom.Link;
import com.rometools.rome.feed.atom.Person;
import com.rometools.rome.feed.synd.SyndPerson;
import com.rometools.rome.io.FeedException;
import com.rometools.rome.io.WireFeedOutput;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jdom2.output.Format;
import org.jdom2.output.XMLOutputter;
import org.springframework.stereotype.Component;

/** Writes feeds as Atom (RFC 4287). */
@Component
class FeedWriter {

  private static final String ATOM = "application/atom+xml";
  private static final int LONGEST_TITLE = 120;

  /** What XML 1.0 cannot hold; one such sign in a note would spoil the whole feed. */
  private static final Pattern UNWRITABLE =
      Pattern.compile("[^\\t\\n\\r\\x{20}-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]");

  private final FeedName names;
  private final Bylines bylines;
  private final TallyWords words;
  private final Phrases phrases;

  FeedWriter(FeedName names, Bylines bylines, TallyWords words, Phrases phrases) {
    this.names = names;
    this.bylines = bylines;
    this.words = words;
    this.phrases = phrases;
  }

  byte[] write(FeedPart part) {
    Feed feed = new Feed("atom_1.0");
    feed.setEncoding(StandardCharsets.UTF_8.name());
    feed.setId(part.name());
    feed.setTitleEx(plain(part.title()));
    feed.setUpdated(Date.from(part.updated()));
    feed.setAuthors(List.of(person(phrases.of("site.name"))));
    feed.setAlternateLinks(List.of(link("alternate", part.address() + part.page(), "text/html")));
    feed.setOtherLinks(links(part));
    feed.setEntries(part.revisions().stream().map(r -> entry(r, part)).toList());
    try {
      // Not as text by the library's own way, which would run the lines of a summary together.
      return new XMLOutputter(Format.getRawFormat())
          .outputString(new WireFeedOutput().outputJDom(feed))
          .getBytes(StandardCharsets.UTF_8);
    } catch (FeedException e) {
      throw new IllegalStateException("The feed " + part.path() + " cannot be written", e);
    }
  }

  /** The further documents are linked as RFC 5005, section 3, has it (from memory). */
  private static List<Link> links(FeedPart part) {
    List<Link> links = new ArrayList<>();
    links.add(link("self", part.self(), ATOM));
    links.add(link("first", part.first(), ATOM));
    String following = part.following();
    if (following != null) {
      links.add(link("next", following, ATOM));
    }
    return links;
  }

  private Entry entry(Revision revision, FeedPart part) {
    Date published = Date.from(revision.publishedAt());
    Entry entry = new Entry();
    entry.setId(names.revision(revision.number()));
    entry.setTitleEx(plain(title(revision)));
    entry.setUpdated(published);
    entry.setPublished(published);
    entry.setAuthors(
        List.of(person(bylines.author(revision).orElseGet(() -> phrases.of("site.name")))));
    bylines
        .approver(revision)
        .ifPresent(approver -> entry.setContributors(List.of(person(approver))));
    String page = part.address() + "/revisions/" + revision.number();
    entry.setAlternateLinks(List.of(link("alternate", page, "text/html")));
    entry.setSummary(plain(summary(revision, part)));
    return entry;
  }

  private String title(Revision revision) {
    String note = revision.note().strip().lines().findFirst().orElse("");
    String number = phrases.of("records.revision.number", revision.number());
    if (note.isEmpty()) {
      return number;
    }
    int end =
        note.offsetByCodePoints(0, Math.min(LONGEST_TITLE, note.codePointCount(0, note.length())));
    String shown = end < note.length() ? note.substring(0, end) + "…" : note;
    return phrases.of("news.feed.entry", number, shown);
  }

  private String summary(Revision revision, FeedPart part) {
    Tally tally = part.tallies().get(revision.number());
    return Stream.concat(
            Stream.of(revision.note().strip()),
            tally == null ? Stream.empty() : words.say(tally).stream())
        .filter(line -> !line.isEmpty())
        .collect(Collectors.joining("\n"));
  }

  private static Content plain(String text) {
    Content content = new Content();
    content.setType(Content.TEXT);
    content.setValue(writable(text));
    return content;
  }

  private static SyndPerson person(String name) {
    Person person = new Person();
    person.setName(writable(name));
    return person;
  }

  private static Link link(String rel, String href, String type) {
    Link link = new Link();
    link.setRel(rel);
    link.setHref(href);
    link.setType(type);
    return link;
  }

  private static String writable(String text) {
    return UNWRITABLE.matcher(text).replaceAll("\uFFFD");
  }
}
