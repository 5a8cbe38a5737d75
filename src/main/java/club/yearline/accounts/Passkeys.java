package club.yearline.accounts;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** The passkeys of people, as they see and remove them. */
@Repository
class Passkeys {

  private final JdbcClient jdbc;

  Passkeys(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  List<Passkey> of(long person) {
    return jdbc.sql("select * from passkey where person_id = :person order by id")
        .param("person", person)
        .query(Passkeys::row)
        .list();
  }

  /** Removes one of a person's passkeys; false if the person has none of this number. */
  boolean remove(long person, long id) {
    return jdbc.sql("delete from passkey where id = :id and person_id = :person")
            .param("id", id)
            .param("person", person)
            .update()
        == 1;
  }

  /** Removes all of a person's passkeys, and the number by which devices know the person. */
  @Transactional
  public void forgetAll(long person) {
    jdbc.sql("delete from passkey where person_id = :person").param("person", person).update();
    jdbc.sql("delete from passkey_owner where person_id = :person")
        .param("person", person)
        .update();
  }

  private static Passkey row(ResultSet row, int number) throws SQLException {
    return new Passkey(
        row.getLong("id"),
        row.getString("name"),
        Accounts.instantOf(row, "created_at"),
        Accounts.instant(row, "used_at"));
  }
}
