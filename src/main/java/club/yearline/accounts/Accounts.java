package club.yearline.accounts;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.GeneratedKeyHolder;
import org.springframework.stereotype.Repository;

/** The open accounts. */
@Repository
class Accounts {

  private static final String OPEN = "select * from person where state = 'ACTIVE' ";

  private static final String ADD =
      """
      insert into person (name, email, email_key, password, role, state, joined_at)
      values (:name, :email, :key, :password, :role, 'ACTIVE', :now)
      """;

  private final JdbcClient jdbc;

  Accounts(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  Optional<Account> find(long id) {
    return jdbc.sql(OPEN + "and id = :id").param("id", id).query(Accounts::row).optional();
  }

  Optional<Account> withEmail(EmailAddress email) {
    return jdbc.sql(OPEN + "and email_key = :key")
        .param("key", email.key())
        .query(Accounts::row)
        .optional();
  }

  List<Account> all() {
    return jdbc.sql(OPEN + "order by lower(name), id").query(Accounts::row).list();
  }

  boolean hasKeeper() {
    return jdbc.sql("select count(*) from person where state = 'ACTIVE' and role = 'KEEPER'")
            .query(Long.class)
            .single()
        > 0;
  }

  /** Opens an account and gives back the id of its person. */
  long add(String name, EmailAddress email, String hash, Role role) {
    GeneratedKeyHolder key = new GeneratedKeyHolder();
    jdbc.sql(ADD)
        .param("name", name)
        .param("email", email.text())
        .param("key", email.key())
        .param("password", hash)
        .param("role", role.name())
        .param("now", now())
        .update(key, "id");
    Number id = key.getKey();
    if (id == null) {
      throw new IllegalStateException("The database gave the new account no number");
    }
    return id.longValue();
  }

  void changePassword(long id, String hash) {
    jdbc.sql("update person set password = :hash, version = version + 1 where id = :id")
        .param("hash", hash)
        .param("id", id)
        .update();
  }

  void changeEmail(long id, EmailAddress email) {
    jdbc.sql(
            """
            update person set email = :email, email_key = :key, version = version + 1
            where id = :id and state = 'ACTIVE'
            """)
        .param("email", email.text())
        .param("key", email.key())
        .param("id", id)
        .update();
  }

  void changeName(long id, String name) {
    jdbc.sql(
            """
            update person set name = :name, version = version + 1
            where id = :id and state = 'ACTIVE'
            """)
        .param("name", name)
        .param("id", id)
        .update();
  }

  void changeRole(long id, Role role) {
    jdbc.sql(
            """
            update person set role = :role, version = version + 1
            where id = :id and state = 'ACTIVE'
            """)
        .param("role", role.name())
        .param("id", id)
        .update();
  }

  /** Lets nobody else change who is keeper until this transaction ends. */
  void lockKeepers() {
    jdbc.sql("select id from club where id = 1 for update").query(Integer.class).single();
  }

  boolean hasKeeperBut(long id) {
    return jdbc.sql(
                """
                select count(*) from person
                where state = 'ACTIVE' and role = 'KEEPER' and id <> :id
                """)
            .param("id", id)
            .query(Long.class)
            .single()
        > 0;
  }

  /** Closes an account: what tells who it was is gone for good. */
  void close(long id) {
    jdbc.sql(
            """
            update person set state = 'CLOSED', closed_at = :now, name = null, email = null,
              email_key = null, password = null, role = 'MEMBER', totp_secret = null,
              totp_since = null, totp_step = null, version = version + 1
            where id = :id and state = 'ACTIVE'
            """)
        .param("now", now())
        .param("id", id)
        .update();
  }

  static OffsetDateTime now() {
    return Instant.now().atOffset(ZoneOffset.UTC);
  }

  static @Nullable Instant instant(ResultSet row, String column) throws SQLException {
    Timestamp time = row.getTimestamp(column);
    return time == null ? null : time.toInstant();
  }

  static Instant instantOf(ResultSet row, String column) throws SQLException {
    return row.getTimestamp(column).toInstant();
  }

  private static Account row(ResultSet row, int number) throws SQLException {
    return new Account(
        row.getLong("id"),
        row.getString("name"),
        row.getString("email"),
        row.getString("password"),
        Role.valueOf(row.getString("role")),
        instantOf(row, "joined_at"),
        row.getString("totp_secret"),
        instant(row, "totp_since"));
  }
}
