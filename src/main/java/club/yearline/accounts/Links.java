package club.yearline.accounts;

import club.yearline.accounts.OneTimeLink.Kind;
import club.yearline.web.Refusal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The links that work once. Of their secrets only hashes are stored. */
@Repository
class Links {

  private static final String USABLE =
      """
      select * from one_time_link l
      where used_at is null and revoked_at is null and expires_at > :now
      """;

  private static final String ADD =
      """
      insert into one_time_link
        (kind, hash, person_id, email, made_by, made_at, expires_at, without_second_factor)
      values (:kind, :hash, :person, :email, :by, :now, :expires, :plain)
      """;

  private final JdbcClient jdbc;

  Links(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** Makes a link and gives back its path, the only place where its secret stands. */
  String make(Kind kind, @Nullable Long person, @Nullable String email, @Nullable Long madeBy) {
    return make(kind, person, email, madeBy, false);
  }

  String make(
      Kind kind,
      @Nullable Long person,
      @Nullable String email,
      @Nullable Long madeBy,
      boolean withoutSecondFactor) {
    String secret = Secret.fresh();
    jdbc.sql(ADD)
        .param("kind", kind.name())
        .param("hash", Secret.hash(secret))
        .param("person", person)
        .param("email", email)
        .param("by", madeBy)
        .param("now", Accounts.now())
        .param("expires", Accounts.now().plus(kind.lifetime()))
        .param("plain", withoutSecondFactor)
        .update();
    return kind.path(secret);
  }

  /** The link with a secret, if it still works; a refusal otherwise. */
  OneTimeLink usable(String secret, Kind... kinds) {
    return find(secret, Set.of(kinds)).orElseThrow(() -> Refusal.of(HttpStatus.GONE, "link-spent"));
  }

  /** The same, for a link that only the person it is about may use. */
  OneTimeLink usableBy(long person, String secret, Kind kind) {
    return find(secret, Set.of(kind))
        .filter(link -> Objects.equals(link.person(), person))
        .orElseThrow(() -> Refusal.of(HttpStatus.GONE, "link-spent"));
  }

  private Optional<OneTimeLink> find(String secret, Collection<Kind> kinds) {
    return jdbc.sql(USABLE + " and hash = :hash and kind in (:kinds)")
        .param("now", Accounts.now())
        .param("hash", Secret.hash(secret))
        .param("kinds", kinds.stream().map(Kind::name).toList())
        .query(Links::row)
        .optional();
  }

  /** Uses a link up; a refusal if somebody else was quicker. */
  void use(OneTimeLink link) {
    int rows =
        jdbc.sql(
                """
                update one_time_link set used_at = :now
                where id = :id and used_at is null and revoked_at is null and expires_at > :now
                """)
            .param("now", Accounts.now())
            .param("id", link.id())
            .update();
    if (rows == 0) {
      throw Refusal.of(HttpStatus.GONE, "link-spent");
    }
  }

  /** The links of a kind that still work, newest first. */
  List<OneTimeLink> open(Kind kind) {
    return jdbc.sql(USABLE + " and kind = :kind order by id desc")
        .param("now", Accounts.now())
        .param("kind", kind.name())
        .query(Links::row)
        .list();
  }

  /** Takes a link back; false if there was none to take back. */
  boolean revoke(long id, Kind kind) {
    return jdbc.sql(
                """
                update one_time_link set revoked_at = :now
                where id = :id and kind = :kind and used_at is null and revoked_at is null
                """)
            .param("now", Accounts.now())
            .param("id", id)
            .param("kind", kind.name())
            .update()
        == 1;
  }

  void revokeAll(Kind kind) {
    open(kind).forEach(link -> revoke(link.id(), kind));
  }

  /** Takes back whatever leads to an account, and what its person has handed out. */
  void revokeFor(long person) {
    jdbc.sql(
            """
            update one_time_link set revoked_at = :now
            where (person_id = :person or made_by = :person)
              and used_at is null and revoked_at is null
            """)
        .param("now", Accounts.now())
        .param("person", person)
        .update();
  }

  /** Forgets what links say about a person. */
  void forget(long person, String email) {
    revokeFor(person);
    jdbc.sql("update one_time_link set email = null where person_id = :person or email = :email")
        .param("person", person)
        .param("email", email)
        .update();
  }

  private static OneTimeLink row(ResultSet row, int number) throws SQLException {
    return new OneTimeLink(
        row.getLong("id"),
        Kind.valueOf(row.getString("kind")),
        row.getObject("person_id", Long.class),
        row.getString("email"),
        row.getObject("made_by", Long.class),
        Accounts.instantOf(row, "made_at"),
        Accounts.instantOf(row, "expires_at"),
        row.getBoolean("without_second_factor"));
  }
}
