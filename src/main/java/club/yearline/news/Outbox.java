package club.yearline.news;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.GeneratedKeyHolder;
import org.springframework.stereotype.Repository;

/**
 * Mail that waits to be sent. It is put here in the transaction of what it tells, and sent
 * afterwards by whichever instance claims it first.
 */
@Repository
class Outbox {

  /** A day's digest is sent on the next morning, universal time. */
  private static final int DIGEST_HOUR = 6;

  private static final String ADD =
      """
      insert into outgoing_mail (person_id, digest_day, state, tries, due_at, since)
      values (:person, :day, 'WAITING', 0, :due, :now)
      on conflict do nothing
      """;

  private static final String DIGEST =
      "select id from outgoing_mail where person_id = :person and digest_day = :day";

  private static final String DUE =
      """
      select * from outgoing_mail where state = 'WAITING' and due_at <= :now
      order by due_at, id fetch first :most rows only
      """;

  private static final String CLAIM =
      """
      update outgoing_mail set state = 'SENDING', tries = tries + 1, since = :now
      where id = :id and state = 'WAITING' and tries = :tries
      """;

  private final JdbcClient jdbc;

  Outbox(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** Adds a mail to be sent at once. */
  long add(long person, Instant now) {
    GeneratedKeyHolder key = new GeneratedKeyHolder();
    insert(person, null, now, now).update(key, "id");
    Number id = key.getKey();
    if (id == null) {
      throw new IllegalStateException("The database gave the mail no number");
    }
    return id.longValue();
  }

  /** The mail that gathers what a person is told on the day of a moment; added if need be. */
  long digest(long person, Instant now) {
    LocalDate day = now.atOffset(ZoneOffset.UTC).toLocalDate();
    Instant due = day.plusDays(1).atTime(DIGEST_HOUR, 0).toInstant(ZoneOffset.UTC);
    insert(person, day, due, now).update();
    return jdbc.sql(DIGEST).param("person", person).param("day", day).query(Long.class).single();
  }

  private JdbcClient.StatementSpec insert(
      long person, @Nullable LocalDate day, Instant due, Instant now) {
    return jdbc.sql(ADD)
        .param("person", person)
        .param("day", day)
        .param("due", utc(due))
        .param("now", utc(now));
  }

  List<OutgoingMail> due(Instant now, int most) {
    return jdbc.sql(DUE).param("now", utc(now)).param("most", most).query(Outbox::row).list();
  }

  /** Takes a mail for sending; false if another instance was faster. */
  boolean claim(OutgoingMail mail, Instant now) {
    return jdbc.sql(CLAIM)
            .param("now", utc(now))
            .param("id", mail.id())
            .param("tries", mail.tries())
            .update()
        == 1;
  }

  void sent(OutgoingMail mail, Instant now) {
    end(mail, "SENT", now);
  }

  void drop(OutgoingMail mail, Instant now) {
    end(mail, "DROPPED", now);
  }

  void retry(OutgoingMail mail, Instant due, Instant now) {
    jdbc.sql(
            """
            update outgoing_mail set state = 'WAITING', due_at = :due, since = :now
            where id = :id and state = 'SENDING'
            """)
        .param("due", utc(due))
        .param("now", utc(now))
        .param("id", mail.id())
        .update();
  }

  /**
   * Gives up what was being sent when an instance died: nobody knows whether it left, and nothing
   * is to be sent twice. Tells how many.
   */
  int dropUnknown(Instant before, Instant now) {
    return jdbc.sql(
            """
            update outgoing_mail set state = 'DROPPED', since = :now
            where state = 'SENDING' and since < :before
            """)
        .param("now", utc(now))
        .param("before", utc(before))
        .update();
  }

  /** Drops what still waits for a person. */
  void forget(long person) {
    jdbc.sql(
            """
            update outgoing_mail set state = 'DROPPED' where person_id = :person
            and state = 'WAITING'
            """)
        .param("person", person)
        .update();
  }

  private void end(OutgoingMail mail, String state, Instant now) {
    jdbc.sql("update outgoing_mail set state = :state, since = :now where id = :id")
        .param("state", state)
        .param("now", utc(now))
        .param("id", mail.id())
        .update();
  }

  private static OffsetDateTime utc(Instant time) {
    return time.atOffset(ZoneOffset.UTC);
  }

  private static OutgoingMail row(ResultSet row, int number) throws SQLException {
    return new OutgoingMail(
        row.getLong("id"),
        row.getLong("person_id"),
        row.getDate("digest_day") != null,
        row.getInt("tries"));
  }
}
