package club.yearline.groundschool;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.GeneratedKeyHolder;
import org.springframework.stereotype.Repository;

/** The hand-outs that members have kept. */
@Repository
class SavedHandouts {

  private static final String READ =
      "select id, person_id, choice, revision, saved_at from hand_out ";

  private final ObjectProvider<JdbcClient> storage;

  SavedHandouts(ObjectProvider<JdbcClient> storage) {
    this.storage = storage;
  }

  /** A person's, newest first. */
  List<SavedHandout> of(long person) {
    return jdbc()
        .sql(READ + "where person_id = :person order by saved_at desc, id desc")
        .param("person", person)
        .query(SavedHandouts::row)
        .list();
  }

  /** One of a person's; empty where there is none, or it is somebody else's. */
  Optional<SavedHandout> find(long id, long person) {
    return jdbc()
        .sql(READ + "where id = :id and person_id = :person")
        .param("id", id)
        .param("person", person)
        .query(SavedHandouts::row)
        .optional();
  }

  /** Keeps one and tells its number. */
  long add(long person, Handout choice, int revision) {
    GeneratedKeyHolder key = new GeneratedKeyHolder();
    jdbc()
        .sql(
            """
            insert into hand_out (person_id, choice, revision, saved_at)
            values (:person, :choice, :revision, :now)
            """)
        .param("person", person)
        .param("choice", choice.query())
        .param("revision", revision)
        .param("now", Timestamp.from(Instant.now()))
        .update(key, "id");
    return Objects.requireNonNull(key.getKeyAs(Number.class)).longValue();
  }

  /** Moves one on to a later revision. */
  void renew(SavedHandout handout, Handout choice, int revision) {
    jdbc()
        .sql(
            """
            update hand_out set choice = :choice, revision = :revision, saved_at = :now
            where id = :id and person_id = :person
            """)
        .param("choice", choice.query())
        .param("revision", revision)
        .param("now", Timestamp.from(Instant.now()))
        .param("id", handout.id())
        .param("person", handout.person())
        .update();
  }

  void remove(long id, long person) {
    jdbc()
        .sql("delete from hand_out where id = :id and person_id = :person")
        .param("id", id)
        .param("person", person)
        .update();
  }

  void removeAll(long person) {
    jdbc().sql("delete from hand_out where person_id = :person").param("person", person).update();
  }

  private JdbcClient jdbc() {
    return storage.getObject();
  }

  private static SavedHandout row(ResultSet row, int number) throws SQLException {
    return new SavedHandout(
        row.getLong("id"),
        row.getLong("person_id"),
        Handout.read(row.getString("choice")),
        row.getInt("revision"),
        row.getTimestamp("saved_at").toInstant());
  }
}
