package club.yearline.news;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The messages of all people. */
@Repository
class Messages {

  private static final String ADD =
      """
      insert into message (person_id, kind, subject, title, actor_id, touched, sent_at, mail_id)
      values (:person, :kind, :subject, :title, :actor, :touched, :now, :mail)
      """;

  private static final String PAGE =
      """
      select * from message where person_id = :person order by id desc
      offset :from rows fetch first :most rows only
      """;

  private static final String READ_ALL =
      """
      update message set read_at = :now where person_id = :person and read_at is null and id <= :upTo
      """;

  private final JdbcClient jdbc;

  Messages(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** Adds a message, with the mail by which it also goes out. */
  void add(long person, Message.About about, @Nullable Long mail) {
    jdbc.sql(ADD)
        .param("person", person)
        .param("kind", about.kind().name())
        .param("subject", about.subject())
        .param("title", about.title())
        .param("actor", about.actor())
        .param("touched", about.touchedText())
        .param("now", now())
        .param("mail", mail)
        .update();
  }

  /** A person's own message. */
  Optional<Message> find(long id, long person) {
    return jdbc.sql("select * from message where id = :id and person_id = :person")
        .param("id", id)
        .param("person", person)
        .query(Messages::row)
        .optional();
  }

  /** Some of a person's messages, newest first. */
  List<Message> of(long person, int from, int most) {
    return jdbc.sql(PAGE)
        .param("person", person)
        .param("from", from)
        .param("most", most)
        .query(Messages::row)
        .list();
  }

  long count(long person) {
    return jdbc.sql("select count(*) from message where person_id = :person")
        .param("person", person)
        .query(Long.class)
        .single();
  }

  /** How many messages a person has not read. */
  long unread(long person) {
    return jdbc.sql("select count(*) from message where person_id = :person and read_at is null")
        .param("person", person)
        .query(Long.class)
        .single();
  }

  void read(long id, long person) {
    jdbc.sql(
            """
            update message set read_at = :now
            where id = :id and person_id = :person and read_at is null
            """)
        .param("now", now())
        .param("id", id)
        .param("person", person)
        .update();
  }

  /** Marks what a person has seen in the list; what came since stays unread. */
  void readAll(long person, long upTo) {
    jdbc.sql(READ_ALL).param("now", now()).param("person", person).param("upTo", upTo).update();
  }

  /** What a mail is to tell: its messages that are still unread, oldest first. */
  List<Message> unreadOf(OutgoingMail mail) {
    return jdbc.sql("select * from message where mail_id = :mail and read_at is null order by id")
        .param("mail", mail.id())
        .query(Messages::row)
        .list();
  }

  void forget(long person) {
    jdbc.sql("delete from message where person_id = :person").param("person", person).update();
  }

  private static OffsetDateTime now() {
    return Instant.now().atOffset(ZoneOffset.UTC);
  }

  private static Message row(ResultSet row, int number) throws SQLException {
    Message.About about =
        new Message.About(
            Message.Kind.valueOf(row.getString("kind")),
            row.getLong("subject"),
            row.getString("title"),
            row.getObject("actor_id", Long.class),
            Message.About.touched(row.getString("touched")));
    return new Message(
        row.getLong("id"),
        row.getLong("person_id"),
        about,
        row.getTimestamp("sent_at").toInstant(),
        row.getTimestamp("read_at") != null);
  }
}
