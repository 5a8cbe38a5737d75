package club.yearline.news;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** How people want to get messages by mail; not at all unless they have said so. */
@Repository
class MailWishes {

  private final JdbcClient jdbc;

  MailWishes(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  MailWish of(long person) {
    return of(List.of(person)).getOrDefault(person, MailWish.NONE);
  }

  /** The wishes of those who want any. */
  Map<Long, MailWish> of(Collection<Long> people) {
    Map<Long, MailWish> wishes = new HashMap<>();
    if (!people.isEmpty()) {
      jdbc.sql("select * from mail_wish where wish <> 'NONE' and person_id in (:people)")
          .param("people", people)
          .query(
              (row, n) ->
                  Map.entry(row.getLong("person_id"), MailWish.valueOf(row.getString("wish"))))
          .list()
          .forEach(entry -> wishes.put(entry.getKey(), entry.getValue()));
    }
    return wishes;
  }

  /** Sets a wish; of two at the same moment, either may be the last. */
  @Transactional
  public void set(long person, MailWish wish) {
    jdbc.sql(
            """
            insert into mail_wish (person_id, wish) values (:person, :wish) on conflict do nothing
            """)
        .param("person", person)
        .param("wish", wish.name())
        .update();
    jdbc.sql("update mail_wish set wish = :wish where person_id = :person")
        .param("person", person)
        .param("wish", wish.name())
        .update();
  }

  void forget(long person) {
    jdbc.sql("delete from mail_wish where person_id = :person").param("person", person).update();
  }
}
