package club.yearline.accounts;

import club.yearline.accounts.SecurityEvent.Kind;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What happened that matters to security, for keepers to read. */
@Repository
class SecurityLog {

  /** More failures than this an hour say nothing new, and would fill the database. */
  private static final int MOST_FAILURES = 600;

  private static final String ADD =
      """
      insert into security_event (happened_at, kind, person_id, about_id, origin, detail)
      values (:now, :kind, :person, :about, :origin, :detail)
      """;

  private final JdbcClient jdbc;
  private final Throttle throttle;

  SecurityLog(JdbcClient jdbc, Throttle throttle) {
    this.jdbc = jdbc;
    this.throttle = throttle;
  }

  /** Somebody did something about the own account. */
  void add(Kind kind, @Nullable Long person, @Nullable ClientAddress from) {
    add(kind, person, null, from, null);
  }

  void add(
      Kind kind,
      @Nullable Long person,
      @Nullable Long about,
      @Nullable ClientAddress from,
      @Nullable String detail) {
    jdbc.sql(ADD)
        .param("now", Accounts.now())
        .param("kind", kind.name())
        .param("person", person)
        .param("about", about)
        .param("origin", from == null ? null : from.shortened())
        .param("detail", detail)
        .update();
  }

  /** A try that failed; about an account if there is one. */
  void addFailure(Kind kind, @Nullable Long about, ClientAddress from) {
    if (throttle.allows("log-failure", "all", MOST_FAILURES, Duration.ofHours(1))) {
      add(kind, null, about, from, null);
    }
  }

  List<SecurityEvent> page(int number, int size) {
    return jdbc.sql("select * from security_event order by id desc limit :size offset :skip")
        .param("size", size)
        .param("skip", (long) (number - 1) * size)
        .query(SecurityLog::row)
        .list();
  }

  long size() {
    return jdbc.sql("select count(*) from security_event").query(Long.class).single();
  }

  void forgetOlderThan(int days) {
    jdbc.sql("delete from security_event where happened_at < :old")
        .param("old", Accounts.now().minusDays(days))
        .update();
  }

  private static SecurityEvent row(ResultSet row, int number) throws SQLException {
    return new SecurityEvent(
        Accounts.instantOf(row, "happened_at"),
        Kind.valueOf(row.getString("kind")),
        row.getObject("person_id", Long.class),
        row.getObject("about_id", Long.class),
        row.getString("origin"),
        row.getString("detail"));
  }
}
