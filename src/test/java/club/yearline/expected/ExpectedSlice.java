package club.yearline.expected;

import static org.mockito.Mockito.when;

import club.yearline.accounts.SecurityConfiguration;
import club.yearline.catalog.Chapters;
import club.yearline.catalog.Contributor;
import club.yearline.catalog.Revision;
import club.yearline.catalog.Snapshot;
import club.yearline.catalog.Snapshots;
import club.yearline.catalog.UnknownRevision;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.web.Phrases;
import java.net.URI;
import java.time.Instant;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.mockito.Mockito;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.webmvc.test.autoconfigure.WebMvcTest;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.bean.override.mockito.MockitoBean;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** The pages of this module over an invented catalogue at revision 12. */
@WebMvcTest({ExpectedController.class, ListController.class, DifferencesController.class})
@Import({
  SecurityConfiguration.class,
  Phrases.class,
  Chapters.class,
  Wording.class,
  ExpectedSections.class
})
abstract class ExpectedSlice {

  static final Snapshot SNAPSHOT =
      new Snapshot(
          new Revision(12, Instant.EPOCH, "note", Contributor.NOBODY, Contributor.NOBODY),
          Catalogue.of(Turnstones.records()));

  @Autowired MockMvcTester web;
  @MockitoBean Snapshots snapshots;

  @BeforeEach
  void publish() {
    UnknownRevision unknown = Mockito.mock(UnknownRevision.class);
    when(unknown.highest()).thenReturn(12);
    when(snapshots.head()).thenReturn(SNAPSHOT);
    when(snapshots.at(12)).thenReturn(SNAPSHOT);
    when(snapshots.at(99)).thenThrow(unknown);
  }

  MvcTestResult get(String address) {
    return web.get().uri(URI.create(address.replace(" ", "%20"))).exchange();
  }

  static Document page(MvcTestResult result) {
    try {
      return Jsoup.parse(result.getResponse().getContentAsString(), "");
    } catch (java.io.UnsupportedEncodingException e) {
      throw new IllegalStateException(e);
    }
  }

  Document ok(String address) {
    MvcTestResult result = get(address);
    org.assertj.core.api.Assertions.assertThat(result).hasStatusOk();
    return page(result);
  }
}
