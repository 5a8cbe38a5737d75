package club.yearline.news;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What is noted of revisions: what they did in figures, and which families they touched. */
@Repository
class Tallies {

  private static final String ADD =
      """
      insert into revision_tally (revision, added, changed, withdrawn, compared, answers_changed,
        on_other_evidence, answers_new, answers_gone)
      values (:revision, :added, :changed, :withdrawn, :compared, :answersChanged,
        :onOtherEvidence, :answersNew, :answersGone)
      on conflict do nothing
      """;

  private static final String ADD_FAMILY =
      """
      insert into revision_family (family_key, revision) values (:family, :revision)
      on conflict do nothing
      """;

  private static final String TOUCHING =
      """
      select revision from revision_family where family_key = :family and revision < :below
      order by revision desc fetch first :most rows only
      """;

  private static final String MISSING =
      """
      select number from revision
      where not exists (select 1 from revision_tally t where t.revision = revision.number)
      order by number
      """;

  private final JdbcClient jdbc;

  Tallies(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  void add(int revision, Tally tally, Collection<String> families) {
    jdbc.sql(ADD)
        .param("revision", revision)
        .param("added", tally.added())
        .param("changed", tally.changed())
        .param("withdrawn", tally.withdrawn())
        .param("compared", tally.compared())
        .param("answersChanged", tally.answersChanged())
        .param("onOtherEvidence", tally.onOtherEvidence())
        .param("answersNew", tally.answersNew())
        .param("answersGone", tally.answersGone())
        .update();
    for (String family : families) {
      jdbc.sql(ADD_FAMILY).param("family", family).param("revision", revision).update();
    }
  }

  /** The figures of some revisions; those not noted yet are left out. */
  Map<Integer, Tally> of(Collection<Integer> revisions) {
    Map<Integer, Tally> tallies = new HashMap<>();
    if (!revisions.isEmpty()) {
      jdbc.sql("select * from revision_tally where revision in (:revisions)")
          .param("revisions", revisions)
          .query((row, n) -> Map.entry(row.getInt("revision"), tally(row)))
          .list()
          .forEach(entry -> tallies.put(entry.getKey(), entry.getValue()));
    }
    return tallies;
  }

  /** Numbers of the latest revisions below a number that touched a family, latest first. */
  List<Integer> touching(String family, int below, int most) {
    return jdbc.sql(TOUCHING)
        .param("family", family)
        .param("below", below)
        .param("most", most)
        .query(Integer.class)
        .list();
  }

  /** Numbers of the revisions that are not noted yet. */
  List<Integer> missing() {
    return jdbc.sql(MISSING).query(Integer.class).list();
  }

  private static Tally tally(ResultSet row) throws SQLException {
    return new Tally(
        row.getInt("added"),
        row.getInt("changed"),
        row.getInt("withdrawn"),
        row.getBoolean("compared"),
        row.getInt("answers_changed"),
        row.getInt("on_other_evidence"),
        row.getInt("answers_new"),
        row.getInt("answers_gone"));
  }
}
