package club.yearline.citation;

import static org.assertj.core.api.Assertions.assertThat;

import de.undercouch.citeproc.ris.RISConverter;
import de.undercouch.citeproc.ris.RISParser;
import de.undercouch.citeproc.ris.RISReference;
import java.io.IOException;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jbibtex.BibTeXDatabase;
import org.jbibtex.BibTeXEntry;
import org.jbibtex.BibTeXParser;
import org.jbibtex.Key;
import org.jbibtex.LaTeXParser;
import org.jbibtex.LaTeXPrinter;
import org.jbibtex.ParseException;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * References as files, read back by parsers that are not ours: BibTeX by jbibtex, RIS by the
 * importer of citeproc-java.
 */
class ReferenceFormatsTest {

  /** Names of variables and types as read in csl-data.json of the CSL schema, commit 00412663. */
  private static final Set<String> CSL_VARIABLES =
      Set.of(
          "id",
          "type",
          "title",
          "container-title",
          "author",
          "publisher",
          "genre",
          "number",
          "volume",
          "issue",
          "issued",
          "URL",
          "accessed");

  private static final Set<String> CSL_TYPES =
      Set.of(
          "article-magazine",
          "book",
          "graphic",
          "manuscript",
          "pamphlet",
          "personal_communication",
          "report",
          "webpage");

  private static Reference titled(String title) {
    return new Reference(
        "bulletin 52/03",
        WorkType.BULLETIN,
        title,
        null,
        List.of(new Name("Åström-Böhm", "Zoë"), Name.organisation("Research and Development, Ltd")),
        "Lindmark & Sons",
        "SB_52-03 {B}",
        Issued.read("1966-04-12"),
        "https://club.example/sources/x?a=1&b={2}%20#f",
        LocalDate.of(2026, 11, 25));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Rotary door latch",
        "Latches & locks: 50 % more, $5, #2, a_b",
        "Ærø, ångström, Łódź, naïve, “quoted”",
        "An open { brace",
        "A closed } brace",
        "{Both} and \\backslash and \\{escaped\\}",
        "tilde ~ caret ^ @string{x = y}",
        "\"quotes\" and 'ticks' and, commas = signs",
        "two\nlines\r\nTY  - BOOK\nER  - ",
        "ends in a backslash \\",
        "<script>alert('x')</script>",
      })
  void everyTitleIsReadBackAsItWas(String title) throws Exception {
    String oneLine = title.replaceAll("\\s+", " ").strip();
    Reference reference = titled(title);
    assertThat(text(bibtex(reference), BibTeXEntry.KEY_TITLE)).isEqualTo(printed(oneLine));
    RISReference ris = ris(reference);
    assertThat(ris.getTitle()).isEqualTo(oneLine);
    assertThat(reference.csl()).containsEntry("title", title);
  }

  @Test
  void bibtexKeepsPeopleOrganisationsAndAddresses() throws Exception {
    BibTeXEntry entry = bibtex(titled("x"));
    assertThat(entry.getType().getValue()).isEqualTo("techreport");
    assertThat(entry.getKey().getValue()).isEqualTo("bulletin-52-03");
    assertThat(entry.getField(BibTeXEntry.KEY_AUTHOR).toUserString())
        .isEqualTo("Åström-Böhm, Zoë and {Research and Development, Ltd}");
    assertThat(text(entry, BibTeXEntry.KEY_INSTITUTION)).isEqualTo("Lindmark & Sons");
    assertThat(text(entry, BibTeXEntry.KEY_NUMBER)).isEqualTo("SB_52-03 {B}");
    assertThat(text(entry, BibTeXEntry.KEY_YEAR)).isEqualTo("1966");
    assertThat(text(entry, BibTeXEntry.KEY_MONTH)).isEqualTo("4");
    assertThat(entry.getField(BibTeXEntry.KEY_URL).toUserString())
        .isEqualTo("https://club.example/sources/x?a=1&b=%7B2%7D%20#f");
    assertThat(text(entry, new Key("urldate"))).isEqualTo("2026-11-25");
  }

  @Test
  void risKeepsPeopleOrganisationsAndAddresses() throws IOException {
    RISReference ris = ris(titled("x"));
    assertThat(ris.getAuthors())
        .containsExactly("Åström-Böhm, Zoë", "Research and Development Ltd");
    assertThat(ris.getPublisher()).isEqualTo("Lindmark & Sons");
    assertThat(ris.getNumber()).isEqualTo("SB_52-03 {B}");
    assertThat(ris.getYear()).isEqualTo("1966");
    assertThat(ris.getDate()).isEqualTo("1966/04/12/");
    assertThat(ris.getAccessDate()).isEqualTo("2026/11/25/");
    assertThat(ris.getURL()).isEqualTo("https://club.example/sources/x?a=1&b={2}%20#f");
    assertThat(new RISConverter().toItemData(ris).getType()).hasToString("report");
  }

  /** Without a personal author it is its publisher that made the document. */
  @Test
  void anOrganisationIsTheAuthorWhereNobodyIsNamed() throws Exception {
    Reference reference =
        Reference.of(source(SourceKind.TYPE_CERTIFICATE_DATA_SHEET, null, "Office of {Air} & Sea"));
    assertThat(reference.csl().get("author"))
        .isEqualTo(List.of(Map.of("literal", "Office of {Air} & Sea")));
    assertThat(reference.csl()).doesNotContainKey("publisher");
    assertThat(text(bibtex(reference), BibTeXEntry.KEY_INSTITUTION))
        .isEqualTo("Office of {Air} & Sea");
    assertThat(ris(reference).getAuthors()).containsExactly("Office of {Air} & Sea");
  }

  @Test
  void aPeriodicalIsWhatItsArticleAppearedIn() throws Exception {
    Reference reference =
        Reference.of(source(SourceKind.PERIODICAL, "Hellmo, Stein", "Halvik Flying Gazette"));
    assertThat(reference.csl())
        .containsEntry("container-title", "Halvik Flying Gazette")
        .containsEntry("volume", "9")
        .containsEntry("issue", "6")
        .doesNotContainKeys("number", "publisher");
    BibTeXEntry entry = bibtex(reference);
    assertThat(text(entry, BibTeXEntry.KEY_JOURNAL)).isEqualTo("Halvik Flying Gazette");
    assertThat(text(entry, BibTeXEntry.KEY_VOLUME)).isEqualTo("9");
    RISReference ris = ris(reference);
    assertThat(ris.getSecondaryTitle()).isEqualTo("Halvik Flying Gazette");
    assertThat(ris.getVolume()).isEqualTo("9");
    assertThat(ris.getIssue()).isEqualTo("6");
  }

  @ParameterizedTest
  @EnumSource
  void everyKindOfSourceIsReadBack(SourceKind kind) throws Exception {
    Reference reference = Reference.of(source(kind, "Oksvang, Birger; Tveide, Runa", "Press"));
    assertThat(CSL_VARIABLES).containsAll(reference.csl().keySet());
    assertThat(CSL_TYPES).contains((String) reference.csl().get("type"));
    assertThat(text(bibtex(reference), BibTeXEntry.KEY_TITLE)).isEqualTo("A title");
    RISReference ris = ris(reference);
    assertThat(ris.getType()).isNotNull();
    assertThat(ris.getAuthors()).containsExactly("Oksvang, Birger", "Tveide, Runa");
  }

  private static Source source(SourceKind kind, @Nullable String author, String publisher) {
    return new Source(
        "key", kind, "A title", author, publisher, "vol. 9, no. 6", "1961-06", null, null, null);
  }

  private static BibTeXEntry bibtex(Reference reference) throws ParseException {
    BibTeXDatabase read = new BibTeXParser().parse(new StringReader(BibTex.write(reference)));
    assertThat(read.getEntries()).hasSize(1);
    return read.getEntries().values().iterator().next();
  }

  /** What LaTeX makes of straight ticks. */
  private static String printed(String text) {
    return text.replace('\'', '’');
  }

  /** A field with its commands carried out and its grouping braces gone. */
  private static String text(BibTeXEntry entry, Key field) throws ParseException {
    String latex = entry.getField(field).toUserString();
    return new LaTeXPrinter().print(new LaTeXParser().parse(new StringReader(latex)));
  }

  private static RISReference ris(Reference reference) throws IOException {
    List<RISReference> all =
        new RISParser().parse(new StringReader(Ris.write(reference))).getReferences();
    assertThat(all).hasSize(1);
    return all.get(0);
  }
}
