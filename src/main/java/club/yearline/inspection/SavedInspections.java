package club.yearline.inspection;

import club.yearline.accounts.Actor;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The inspections that people have saved, each its own. */
@Component
class SavedInspections {

  private static final String COLUMNS =
      "select id, airframe_id, revision, variant_key, model_year, serial, seen, seen_on"
          + " from inspection where person_id = :person";

  /** The list shows the latest; the register has all. */
  private static final int MOST_LISTED = 50;

  private final JdbcClient jdbc;

  SavedInspections(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** Saves an inspection; one that is saved already stays as it is. */
  void save(Actor actor, SavedInspection made) {
    try {
      jdbc.sql(
              "insert into inspection (person_id, id, airframe_id, revision, variant_key,"
                  + " model_year, serial, seen, seen_on, saved_at) values (:person, :id, :airframe,"
                  + " :revision, :variant, :year, :serial, :seen, :on, :at)")
          .param("person", actor.id())
          .param("id", made.id())
          .param("airframe", made.airframe())
          .param("revision", made.revision())
          .param("variant", made.variant())
          .param("year", made.year())
          .param("serial", made.serial())
          .param("seen", String.join("\n", made.seen()))
          .param("on", made.on())
          .param("at", OffsetDateTime.now(ZoneOffset.UTC))
          .update();
    } catch (DuplicateKeyException savedAlready) {
      requireSaved(actor, made.id(), savedAlready);
    }
  }

  private void requireSaved(Actor actor, UUID id, DuplicateKeyException why) {
    if (find(actor, id).isEmpty()) {
      throw why;
    }
  }

  /** A person's own inspection. */
  Optional<SavedInspection> find(Actor actor, UUID id) {
    return jdbc.sql(COLUMNS + " and id = :id")
        .param("person", actor.id())
        .param("id", id)
        .query(SavedInspections::read)
        .optional();
  }

  /** A person's own inspections, the latest first. */
  List<SavedInspection> of(Actor actor) {
    return jdbc.sql(COLUMNS + " order by saved_at desc fetch first " + MOST_LISTED + " rows only")
        .param("person", actor.id())
        .query(SavedInspections::read)
        .list();
  }

  private static SavedInspection read(ResultSet row, int number) throws SQLException {
    return new SavedInspection(
        row.getObject("id", UUID.class),
        row.getLong("airframe_id"),
        row.getInt("revision"),
        row.getString("variant_key"),
        row.getObject("model_year", Integer.class),
        row.getString("serial"),
        row.getString("seen").lines().toList(),
        row.getObject("seen_on", LocalDate.class));
  }
}
