package club.yearline.citing;

import club.yearline.citation.Reference;
import club.yearline.web.Refusal;
import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import de.undercouch.citeproc.CSL;
import de.undercouch.citeproc.ListItemDataProvider;
import de.undercouch.citeproc.csl.CSLItemData;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;

/**
 * Writes references in the published styles. Reading a style takes a second, so that each is read
 * when first asked for; one citation is made at a time, and those made lately are kept.
 */
@Component
public class Styles {

  private static final int KEPT = 2_000;
  private static final int PATIENCE_SECONDS = 10;

  /** The library takes a hyphen between figures for a range; document numbers mean a hyphen. */
  private static final char HYPHEN = '\ue02d';

  private final ReentrantLock turn = new ReentrantLock(true);
  private final Map<Style, Desk> desks = new EnumMap<>(Style.class);
  private final Cache<Asked, Cited> made = Caffeine.newBuilder().maximumSize(KEPT).build();

  /** What is asked for. */
  private record Asked(Reference reference, Style style) {}

  /** A style, read, and the one work that it is given. */
  private record Desk(CSL style, One work) {}

  /**
   * A reference in a style.
   *
   * @throws Refusal if too many are being made
   */
  public Cited cite(Reference reference, Style style) {
    Asked asked = new Asked(reference, style);
    Cited known = made.getIfPresent(asked);
    if (known != null) {
      return known;
    }
    takeTurn();
    try {
      Cited cited = write(reference, desks.computeIfAbsent(style, Styles::desk));
      made.put(asked, cited);
      return cited;
    } finally {
      turn.unlock();
    }
  }

  private void takeTurn() {
    try {
      if (turn.tryLock(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        return;
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    throw Refusal.of(HttpStatus.SERVICE_UNAVAILABLE, "busy");
  }

  private static Desk desk(Style style) {
    try {
      One work = new One();
      CSL read = new CSL(work, style.file());
      read.setOutputFormat("html");
      return new Desk(read, work);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Cited write(Reference reference, Desk desk) {
    Map<String, Object> item = new HashMap<>(reference.csl());
    item.put("id", One.ID);
    item.computeIfPresent("number", (name, text) -> text.toString().replace('-', HYPHEN));
    desk.work().item = CSLItemData.fromJson(item);
    desk.style().reset();
    desk.style().registerCitationItems(One.ID);
    return CitedReader.read(desk.style().makeBibliography().makeString().replace(HYPHEN, '-'));
  }

  /** Hands the library the work whose turn it is. */
  private static final class One extends ListItemDataProvider {

    static final String ID = "one";

    private CSLItemData item = CSLItemData.fromJson(Map.of("id", ID, "type", "book"));

    @Override
    public CSLItemData retrieveItem(String id) {
      return item;
    }
  }
}
