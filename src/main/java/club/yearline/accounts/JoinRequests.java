package club.yearline.accounts;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.GeneratedKeyHolder;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** Who asks to join. */
@Repository
class JoinRequests {

  /** Decided ones are kept for so long, in case somebody asks what became of them. */
  private static final int KEPT_DAYS = 90;

  /** More waiting than this is no club but a machine. */
  private static final int MOST_OPEN = 200;

  private final JdbcClient jdbc;
  private final ApplicationEventPublisher events;

  JoinRequests(JdbcClient jdbc, ApplicationEventPublisher events) {
    this.jdbc = jdbc;
    this.events = events;
  }

  /** Somebody who asks to join. */
  record JoinRequest(long id, String name, String email, String note, Instant askedAt) {}

  /** Adds a request unless one of the same address waits already, or too many do. */
  @Transactional
  public void add(String name, EmailAddress email, String note) {
    List<JoinRequest> open = open();
    boolean waits = open.stream().anyMatch(r -> r.email().equalsIgnoreCase(email.text()));
    if (waits || open.size() >= MOST_OPEN) {
      return;
    }
    GeneratedKeyHolder key = new GeneratedKeyHolder();
    jdbc.sql(
            """
            insert into join_request (name, email, note, state, asked_at)
            values (:name, :email, :note, 'OPEN', :now)
            """)
        .param("name", name)
        .param("email", email.text())
        .param("note", note)
        .param("now", Accounts.now())
        .update(key, "id");
    Number id = key.getKey();
    if (id != null) {
      events.publishEvent(new JoinAsked(id.longValue()));
    }
  }

  List<JoinRequest> open() {
    return jdbc.sql("select * from join_request where state = 'OPEN' order by asked_at, id")
        .query(JoinRequests::row)
        .list();
  }

  Optional<JoinRequest> open(long id) {
    return jdbc.sql("select * from join_request where id = :id and state = 'OPEN'")
        .param("id", id)
        .query(JoinRequests::row)
        .optional();
  }

  /** Decides on a request; false if somebody else has. */
  boolean decide(long id, boolean accepted, long by) {
    return jdbc.sql(
                """
                update join_request set state = :state, decided_at = :now, decided_by = :by
                where id = :id and state = 'OPEN'
                """)
            .param("state", accepted ? "ACCEPTED" : "DECLINED")
            .param("now", Accounts.now())
            .param("by", by)
            .param("id", id)
            .update()
        == 1;
  }

  void forget(String email) {
    jdbc.sql("delete from join_request where lower(email) = :email")
        .param("email", email.toLowerCase(Locale.ROOT))
        .update();
  }

  void forgetOld() {
    jdbc.sql("delete from join_request where decided_at < :old")
        .param("old", Accounts.now().minusDays(KEPT_DAYS))
        .update();
  }

  private static JoinRequest row(ResultSet row, int number) throws SQLException {
    return new JoinRequest(
        row.getLong("id"),
        row.getString("name"),
        row.getString("email"),
        row.getString("note"),
        Accounts.instantOf(row, "asked_at"));
  }
}
