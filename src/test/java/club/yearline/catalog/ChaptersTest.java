package club.yearline.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ChaptersTest {

  private final Chapters chapters = new Chapters();

  @Test
  void areTitledAsInTheStandardButInSentenceCase() {
    // Source: JASC code table of 27 October 2008, see jasc/README.md.
    assertThat(chapters.title("33")).contains("Lights");
    assertThat(chapters.title("25")).contains("Equipment/Furnishings");
    assertThat(chapters.title("30")).contains("Ice and rain protection");
    assertThat(chapters.all()).hasSize(51);
  }

  @Test
  void haveNoTitleForAChapterThatTheStandardLacks() {
    assertThat(chapters.title("20")).isEmpty();
  }
}
