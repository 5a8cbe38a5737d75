package club.yearline.compare;

import static org.mockito.Mockito.when;

import club.yearline.accounts.SecurityConfiguration;
import club.yearline.catalog.Contributor;
import club.yearline.catalog.Revision;
import club.yearline.catalog.Snapshot;
import club.yearline.catalog.Snapshots;
import club.yearline.catalog.UnknownRevision;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Records;
import club.yearline.testing.Sample;
import club.yearline.web.Phrases;
import java.io.UnsupportedEncodingException;
import java.net.URI;
import java.time.Instant;
import org.assertj.core.api.Assertions;
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

/** The page over {@link Tourers} at revision 12; revision 3 knows no figures yet. */
@WebMvcTest(CompareController.class)
@Import({SecurityConfiguration.class, Phrases.class, Wording.class, CompareSections.class})
abstract class CompareSlice {

  private static final Snapshot NEWEST = snapshot(12, Tourers.records());
  private static final Snapshot EARLY = snapshot(3, Sample.records(Sample.turnstone()));

  @Autowired MockMvcTester web;
  @MockitoBean Snapshots snapshots;

  private static Snapshot snapshot(int number, Records records) {
    return new Snapshot(
        new Revision(number, Instant.EPOCH, "note", Contributor.NOBODY, Contributor.NOBODY),
        Catalogue.of(records));
  }

  @BeforeEach
  void publish() {
    UnknownRevision unknown = Mockito.mock(UnknownRevision.class);
    when(unknown.highest()).thenReturn(12);
    when(snapshots.head()).thenReturn(NEWEST);
    when(snapshots.at(12)).thenReturn(NEWEST);
    when(snapshots.at(3)).thenReturn(EARLY);
    when(snapshots.at(99)).thenThrow(unknown);
  }

  MvcTestResult get(String address) {
    return web.get().uri(URI.create(address.replace(" ", "%20"))).exchange();
  }

  static Document page(MvcTestResult result) {
    try {
      return Jsoup.parse(result.getResponse().getContentAsString(), "");
    } catch (UnsupportedEncodingException e) {
      throw new IllegalStateException(e);
    }
  }

  Document ok(String address) {
    MvcTestResult result = get(address);
    Assertions.assertThat(result).hasStatusOk();
    return page(result);
  }
}
