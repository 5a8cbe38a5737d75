package club.yearline.accounts;

import club.yearline.web.Phrases;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Everybody who has or had an account, as the rest of the application may know them. */
@Repository
public class People {

  private final JdbcClient jdbc;
  private final Phrases phrases;

  People(JdbcClient jdbc, Phrases phrases) {
    this.jdbc = jdbc;
    this.phrases = phrases;
  }

  /** The name of a person; a neutral one where the account is closed or never was. */
  public String nameOf(long id) {
    return namesOf(Set.of(id)).getOrDefault(id, formerMember());
  }

  /** The names of several people, in one question; each id asked for has one. */
  public Map<Long, String> namesOf(Collection<Long> ids) {
    Map<Long, String> names = new HashMap<>();
    if (ids.isEmpty()) {
      return names;
    }
    ids.forEach(id -> names.put(id, formerMember()));
    jdbc.sql("select id, name from person where id in (:ids) and state = 'ACTIVE'")
        .param("ids", Set.copyOf(ids))
        .query((row, n) -> Map.entry(row.getLong("id"), row.getString("name")))
        .list()
        .forEach(entry -> names.put(entry.getKey(), entry.getValue()));
    return names;
  }

  /** Everybody with an open account who may do what a role may, in the order of joining. */
  public List<Actor> withRole(Role least) {
    return jdbc
        .sql("select id, name, role from person where state = 'ACTIVE' order by id")
        .query(People::actor)
        .list()
        .stream()
        .filter(actor -> actor.isAtLeast(least))
        .toList();
  }

  /** Where a person is reached by mail; empty where the account is closed. */
  public Optional<String> mailOf(long id) {
    return jdbc.sql("select email from person where id = :id and state = 'ACTIVE'")
        .param("id", id)
        .query(String.class)
        .optional();
  }

  /** A person with an open account. */
  public Optional<Actor> find(long id) {
    return jdbc.sql("select id, name, role from person where id = :id and state = 'ACTIVE'")
        .param("id", id)
        .query(People::actor)
        .optional();
  }

  private String formerMember() {
    return phrases.of("person.former");
  }

  private static Actor actor(ResultSet row, int number) throws SQLException {
    return new Actor(row.getLong("id"), row.getString("name"), Role.valueOf(row.getString("role")));
  }
}
