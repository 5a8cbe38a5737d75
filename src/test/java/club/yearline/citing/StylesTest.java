package club.yearline.citing;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.citation.Issued;
import club.yearline.citation.Name;
import club.yearline.citation.Reference;
import club.yearline.citation.Source;
import club.yearline.citation.SourceKind;
import club.yearline.citation.WorkType;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Citations in the published styles; what guides print of them is in {@code published}. */
class StylesTest {

  private static final Styles STYLES = new Styles();

  private static Style style(String code) {
    return Arrays.stream(Style.values()).filter(s -> s.code().equals(code)).findFirst().get();
  }

  @ParameterizedTest(name = "{0}: {3}")
  @CsvFileSource(resources = "/published/citations.csv", numLinesToSkip = 1)
  void writesAsGuidesPrintIt(
      String style,
      WorkType type,
      String author,
      String title,
      @Nullable String container,
      @Nullable String publisher,
      @Nullable String issued,
      @Nullable String url,
      @Nullable LocalDate accessed,
      String expected) {
    Reference work =
        new Reference(
            "x",
            type,
            title,
            container,
            Name.read(author),
            publisher,
            null,
            Issued.read(issued),
            url,
            accessed);
    assertThat(STYLES.cite(work, style(style)).text()).isEqualTo(expected);
  }

  @ParameterizedTest
  @EnumSource
  void keepsDocumentNumbersAndSignsAsTheyAre(Style style) {
    Reference bulletin =
        Reference.of(
            new Source(
                "x",
                SourceKind.SERVICE_BULLETIN,
                "Latches {new} & <i>old</i>",
                null,
                "Lindmark & Sons",
                "SB 52-03",
                "1966",
                null,
                null,
                null));
    assertThat(STYLES.cite(bulletin, style).text())
        .contains("SB 52-03", "Lindmark & Sons", "{", "&")
        .containsIgnoringCase("Latches {new} & <i>old</i>");
  }

  /** In italics is what the style sets so: the title of a report, not its author. */
  @ParameterizedTest
  @EnumSource
  void setsTitlesOfReportsInItalics(Style style) {
    Cited cited = STYLES.cite(report("Alpha"), style);
    assertThat(cited.runs())
        .anyMatch(run -> run.italic() && run.text().contains("Alpha"))
        .anyMatch(run -> !run.italic() && run.text().contains("Office"));
    assertThat(cited.text()).doesNotStartWith(" ").doesNotEndWith(" ").doesNotContain("  ");
  }

  /** Guides to APA and Chicago: letters and interviews are named in the text only. */
  @ParameterizedTest
  @CsvSource({"apa, true", "chicago, true", "iso-690, false"})
  void leavesLettersOutWhereTheStyleListsNone(String style, boolean empty) {
    Reference letter =
        Reference.of(
            new Source(
                "x",
                SourceKind.RECOLLECTION,
                "What I saw",
                "Nyrud, Asta",
                null,
                null,
                "1998",
                null,
                null,
                null));
    assertThat(STYLES.cite(letter, style(style)).isEmpty()).isEqualTo(empty);
  }

  /** The library's styles hold state: two at once must not mix what they write. */
  @Test
  void manyAtOnceGetEachTheirOwn() throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(4);
    try {
      List<Future<String>> made = new ArrayList<>();
      for (int i = 0; i < 60; i++) {
        Reference work = report("Number " + i);
        made.add(threads.submit(() -> STYLES.cite(work, Style.APA).text()));
      }
      for (int i = 0; i < made.size(); i++) {
        assertThat(made.get(i).get()).startsWith("Office. (1966). Number " + i + " [");
      }
    } finally {
      threads.shutdownNow();
    }
  }

  private static Reference report(String title) {
    return Reference.of(
        new Source(
            "x",
            SourceKind.TYPE_CERTIFICATE_DATA_SHEET,
            title,
            null,
            "Office",
            null,
            "1966",
            null,
            null,
            null));
  }
}
