package club.yearline.quiz;

import club.yearline.accounts.Secret;
import java.sql.Date;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The links of classes. A link's secret is stored nowhere, only its hash. */
@Repository
class QuizLinks {

  private static final String READ =
      "select id, person_id, choice, revision, last_day from quiz_link ";

  private final ObjectProvider<JdbcClient> storage;

  QuizLinks(ObjectProvider<JdbcClient> storage) {
    this.storage = storage;
  }

  /** A person's, newest first. */
  List<QuizLink> of(long person) {
    return jdbc()
        .sql(READ + "where person_id = :person order by id desc")
        .param("person", person)
        .query(QuizLinks::row)
        .list();
  }

  /** The link of a secret; empty where there is none, or no more. */
  Optional<QuizLink> find(String secret) {
    return jdbc()
        .sql(READ + "where token_hash = :hash")
        .param("hash", Secret.hash(secret))
        .query(QuizLinks::row)
        .optional();
  }

  /** Makes one and tells its secret, once. */
  String add(long person, Given given, int revision, LocalDate lastDay) {
    String secret = Secret.fresh();
    jdbc()
        .sql(
            """
            insert into quiz_link (person_id, token_hash, choice, revision, last_day, made_at)
            values (:person, :hash, :choice, :revision, :day, :now)
            """)
        .param("person", person)
        .param("hash", Secret.hash(secret))
        .param("choice", given.query())
        .param("revision", revision)
        .param("day", Date.valueOf(lastDay))
        .param("now", Timestamp.from(Instant.now()))
        .update();
    return secret;
  }

  /** Takes one of a person's away; tells whether there was one. */
  boolean remove(long id, long person) {
    return jdbc()
            .sql("delete from quiz_link where id = :id and person_id = :person")
            .param("id", id)
            .param("person", person)
            .update()
        > 0;
  }

  void removeAll(long person) {
    jdbc().sql("delete from quiz_link where person_id = :person").param("person", person).update();
  }

  private JdbcClient jdbc() {
    return storage.getObject();
  }

  private static QuizLink row(ResultSet row, int number) throws SQLException {
    return new QuizLink(
        row.getLong("id"),
        row.getLong("person_id"),
        Given.read(row.getString("choice")),
        row.getInt("revision"),
        row.getDate("last_day").toLocalDate());
  }
}
