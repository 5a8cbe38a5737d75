package club.yearline.testing;

import club.yearline.catalog.Edition;
import club.yearline.catalog.Publication;
import club.yearline.catalog.Snapshots;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;

/**
 * The whole application over the demo, to be looked at in a browser. All such classes share one
 * start of it. Revision 2 moves the swept fin of the LA-2B from LT-0501 to LT-0503.
 */
@InBrowser
@SpringBootTest(
    webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
    properties = {
      "spring.datasource.url=jdbc:h2:mem:browser;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;"
          + "DEFAULT_NULL_ORDERING=HIGH",
      "yearline.demo=true"
    })
public abstract class DemoInBrowser {

  private static final String FIN = "fin-swept";

  @LocalServerPort private int port;
  @Autowired private Publication publication;
  @Autowired private Snapshots snapshots;

  /** Publishes revision 2, once. */
  @BeforeEach
  void amend() {
    if (snapshots.head().number() == 1) {
      Change fin = later(snapshots.head().catalogue());
      publication.publish(
          Edition.of("The swept fin began two airframes later", null, List.of(fin)));
    }
  }

  private static Change later(Catalogue catalogue) {
    Change fin = catalogue.change(FIN).orElseThrow();
    List<CutIn> cutIns =
        fin.cutIns().stream()
            .map(c -> c.variant().equals("la-2b") ? moved(c, "LT-0503") : c)
            .toList();
    return new Change(
        FIN, fin.feature(), fin.title(), fin.detail(), fin.offering(), cutIns, fin.citations());
  }

  private static CutIn moved(CutIn c, String serial) {
    return new CutIn(
        c.variant(), c.atStart(), c.firstYear(), c.settledYear(), c.series(), serial, serial);
  }

  /** The full address of a path. */
  protected String at(String path) {
    return "http://localhost:" + port + path;
  }
}
