package club.yearline.accounts;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;

/**
 * The club's settings. Every request asks for them, so they are kept in memory; each instance looks
 * for a change twice a second.
 */
@Component
public class Club {

  private static final Logger log = LoggerFactory.getLogger(Club.class);

  private static final String READ =
      "select name, closed, single_keeper, join_requests, log_days, version from club where id = 1";

  private static final String WRITE =
      """
      update club set name = :name, closed = :closed, single_keeper = :singleKeeper,
        join_requests = :joinRequests, log_days = :logDays, version = version + 1
      where id = 1 and version = :version
      """;

  private final ObjectProvider<JdbcClient> storage;
  private volatile ClubSettings settings;

  Club(ObjectProvider<JdbcClient> storage) {
    this.storage = storage;
    this.settings = read();
  }

  /** The club's name; empty where none was given. */
  public String name() {
    return settings.name();
  }

  /** Whether only members may read the catalogue. */
  public boolean isClosed() {
    return settings.closed();
  }

  /** Whether one keeper works alone and may decide on own corrections. */
  public boolean isSingleKeeper() {
    return settings.singleKeeper();
  }

  /** Whether visitors may ask to join. */
  public boolean takesJoinRequests() {
    return settings.joinRequests();
  }

  ClubSettings settings() {
    return settings;
  }

  /** Puts new settings in force; false if somebody else has changed them since they were read. */
  boolean change(ClubSettings wanted) {
    int rows =
        storage
            .getObject()
            .sql(WRITE)
            .param("name", wanted.name())
            .param("closed", wanted.closed())
            .param("singleKeeper", wanted.singleKeeper())
            .param("joinRequests", wanted.joinRequests())
            .param("logDays", wanted.logDays())
            .param("version", wanted.version())
            .update();
    settings = read();
    return rows == 1;
  }

  @Scheduled(fixedDelay = 500, timeUnit = TimeUnit.MILLISECONDS)
  void look() {
    try {
      settings = read();
    } catch (DataAccessException e) {
      // What was in force stays in force until the database answers again.
      log.warn("Cannot read the club's settings: {}", e.getMessage());
    }
  }

  /** Without storage, as in tests of single pages, the club is as on the first day. */
  private ClubSettings read() {
    JdbcClient jdbc = storage.getIfAvailable();
    return jdbc == null ? ClubSettings.FRESH : jdbc.sql(READ).query(Club::row).single();
  }

  private static ClubSettings row(ResultSet row, int number) throws SQLException {
    return new ClubSettings(
        row.getString("name"),
        row.getBoolean("closed"),
        row.getBoolean("single_keeper"),
        row.getBoolean("join_requests"),
        row.getInt("log_days"),
        row.getInt("version"));
  }
}
