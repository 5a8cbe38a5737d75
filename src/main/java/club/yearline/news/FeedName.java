package club.yearline.news;

import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Names for the feeds and their entries that stay the same for ever. They are made from a random
 * name in the database, not from the address, because they must not change when the site moves.
 */
@Component
class FeedName {

  private final JdbcClient jdbc;
  private volatile @Nullable UUID known;

  FeedName(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** The name of the feed of everything. */
  String whole() {
    return made("feed");
  }

  String family(String key) {
    return made("feed/families/" + key);
  }

  /** The name of a revision, the same in every feed. */
  String revision(int number) {
    return made("revisions/" + number);
  }

  private String made(String of) {
    String text = installation() + "/" + of;
    return "urn:uuid:" + UUID.nameUUIDFromBytes(text.getBytes(StandardCharsets.UTF_8));
  }

  private UUID installation() {
    UUID name = known;
    if (name == null) {
      name = jdbc.sql("select name from feed where id = 1").query(UUID.class).single();
      known = name;
    }
    return name;
  }
}
