package club.yearline.news;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Who watches what. */
@Repository
class Watches {

  private static final int BATCH = 500;

  private static final String ADD =
      """
      insert into watch (person_id, kind, entry_key, since) values (:person, :kind, :key, :now)
      on conflict do nothing
      """;

  private static final String ONE = "person_id = :person and kind = :kind and entry_key = :key";

  private final JdbcClient jdbc;

  Watches(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** Somebody and something that the person watches. */
  private record Watch(long person, Watched watched) {}

  void add(long person, Watched watched) {
    one(ADD, person, watched).param("now", Instant.now().atOffset(ZoneOffset.UTC)).update();
  }

  void remove(long person, Watched watched) {
    one("delete from watch where " + ONE, person, watched).update();
  }

  boolean has(long person, Watched watched) {
    return one("select count(*) from watch where " + ONE, person, watched)
            .query(Long.class)
            .single()
        > 0;
  }

  /** What a person watches, in the order in which it began. */
  List<Watched> of(long person) {
    return jdbc
        .sql("select * from watch where person_id = :person order by since, entry_key")
        .param("person", person)
        .query(Watches::row)
        .list()
        .stream()
        .map(Watch::watched)
        .toList();
  }

  /** Who watches any of the given, and what of it. */
  Map<Long, List<Watched>> of(Collection<Watched> watched) {
    Map<Watched.Kind, List<String>> keys =
        watched.stream()
            .collect(
                Collectors.groupingBy(
                    Watched::kind, Collectors.mapping(Watched::key, Collectors.toList())));
    Map<Long, List<Watched>> found = new LinkedHashMap<>();
    keys.forEach(
        (kind, all) -> {
          for (int from = 0; from < all.size(); from += BATCH) {
            List<String> some = all.subList(from, Math.min(from + BATCH, all.size()));
            for (Watch watch : watching(kind, some)) {
              found.computeIfAbsent(watch.person(), p -> new ArrayList<>()).add(watch.watched());
            }
          }
        });
    return found;
  }

  void forget(long person) {
    jdbc.sql("delete from watch where person_id = :person").param("person", person).update();
  }

  private List<Watch> watching(Watched.Kind kind, List<String> keys) {
    return jdbc.sql("select * from watch where kind = :kind and entry_key in (:keys)")
        .param("kind", kind.name())
        .param("keys", keys)
        .query(Watches::row)
        .list();
  }

  private JdbcClient.StatementSpec one(String sql, long person, Watched watched) {
    return jdbc.sql(sql)
        .param("person", person)
        .param("kind", watched.kind().name())
        .param("key", watched.key());
  }

  private static Watch row(ResultSet row, int number) throws SQLException {
    return new Watch(
        row.getLong("person_id"),
        new Watched(Watched.Kind.valueOf(row.getString("kind")), row.getString("entry_key")));
  }
}
