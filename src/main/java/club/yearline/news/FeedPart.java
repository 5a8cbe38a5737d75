package club.yearline.news;

import club.yearline.catalog.Revision;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What one document of a feed holds.
 *
 * @param name its name, the same for every document of the feed
 * @param title as shown
 * @param address the site
 * @param path the feed, at the newest revision
 * @param page the page that shows the same
 * @param below the number below which its revisions lie; null in the newest document
 * @param revisions its revisions, newest first
 * @param tallies what they did, where that is noted
 * @param next the number below which the next document's revisions lie; null in the last one
 */
record FeedPart(
    String name,
    String title,
    String address,
    String path,
    String page,
    @Nullable Integer below,
    List<Revision> revisions,
    Map<Integer, Tally> tallies,
    @Nullable Integer next) {

  /** When it last changed. */
  Instant updated() {
    return revisions.isEmpty() ? Instant.EPOCH : revisions.get(0).publishedAt();
  }

  String self() {
    return below == null ? first() : first() + "?before=" + below;
  }

  String first() {
    return address + path;
  }

  /** The document of older revisions; null where there is none. */
  @Nullable String following() {
    return next == null ? null : first() + "?before=" + next;
  }
}
