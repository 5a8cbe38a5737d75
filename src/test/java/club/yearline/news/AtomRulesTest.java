package club.yearline.news;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rules notice what is wrong, so that their silence about our feeds means something. */
class AtomRulesTest {

  private static final String VALID =
      """
      <feed xmlns="http://www.w3.org/2005/Atom">
        <id>urn:uuid:60a76c80-d399-11d9-b93c-0003939e0af6</id>
        <title>Feed</title>
        <updated>2026-03-01T10:15:30Z</updated>
        <link rel="self" href="https://a.example/feed" type="application/atom+xml"/>
        <entry>
          <id>urn:uuid:1225c695-cfb8-4ebb-aaaa-80da344efa6a</id>
          <title type="text">One</title>
          <updated>2026-03-01T10:15:30.5+01:00</updated>
          <author><name>Ann</name></author>
          <link href="https://a.example/1"/>
        </entry>
      </feed>
      """;

  @Test
  void aValidFeedBreaksNone() {
    assertThat(AtomRules.brokenBy(VALID)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<title>Feed</title>| |4.1.1 exactly one title",
        "<title>Feed</title>|<title>A</title><title>B</title>|4.1.1 exactly one title",
        "<updated>2026-03-01T10:15:30Z</updated>| |4.1.1 exactly one updated",
        "2026-03-01T10:15:30Z|2026-03-01 10:15:30|3.3 a date is an RFC 3339 date-time",
        "2026-03-01T10:15:30Z|2026-03-01t10:15:30z|3.3 a date is an RFC 3339 date-time",
        "urn:uuid:60a76c80-d399-11d9-b93c-0003939e0af6|feed|4.2.6 an id is an IRI",
        "<id>urn:uuid:60a76c80-d399-11d9-b93c-0003939e0af6</id>| |4.1.1 exactly one id",
        "<author><name>Ann</name></author>| |4.1.2 an author, or one of the feed",
        "<author><name>Ann</name></author>| |4.1.1 an author of the feed, or of every entry",
        "<name>Ann</name>| |3.2.1 exactly one name",
        "<name>Ann</name>|<name>Ann</name><born>1950</born>|3.2 only children that the grammar knows",
        "<link href=\"https://a.example/1\"/>| |4.1.2 an alternate link where there is no content",
        "<link href=\"https://a.example/1\"/>|<link/>|4.2.7.1 a link has an address",
        "type=\"text\">One|type=\"text/plain\">One|3.1.1 the type of a text is text, html or xhtml",
        "type=\"text\">One|type=\"text\"><b>One</b>|3.1.1.1 plain text has no child elements",
        "rel=\"self\"|rel=\"via\"|4.1.1 (should) a link to itself",
        "application/atom+xml|feed|4.2.7.3 a link's type is a media type",
        "<entry>|<entry><content/><content/>|4.1.2 at most one content",
        "<entry>|<entry><subtitle/>|4.1.2 only children that the grammar knows",
        "</entry>|</entry><rights/>|4.1.1 entries follow the metadata",
        "<link href=\"https://a.example/1\"/>|<link href=\"https://a.example/1\"/><link href=\"b\"/>"
            + "|4.1.2 one alternate link for each type and language",
        "http://www.w3.org/2005/Atom|http://purl.org/atom/ns#|1.2 the namespace is Atom's",
        "1225c695-cfb8-4ebb-aaaa-80da344efa6a|1225c695|",
      })
  void aFaultIsNoticed(String valid, String faulty, String rule) {
    String document = VALID.replace(valid, faulty == null ? "" : faulty);
    assertThat(document).isNotEqualTo(VALID);
    if (rule == null) {
      assertThat(AtomRules.brokenBy(document)).isEmpty();
    } else {
      assertThat(AtomRules.brokenBy(document)).contains(rule);
    }
  }
}
