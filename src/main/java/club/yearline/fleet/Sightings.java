package club.yearline.fleet;

import club.yearline.effectivity.Serial;
import club.yearline.fleet.UsedObservation.Place;
import club.yearline.fleet.UsedObservation.Use;
import club.yearline.fleet.UsedObservation.Uses;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** What all registered airframes show, as evidence of where a change cut in. */
@Repository
public class Sightings {

  /**
   * Two members may have registered one airframe: it counts once, by what was seen last, and is
   * named only if both agree.
   */
  private static final String LATEST =
      """
      select * from (
        select o.id as observation, a.id as airframe, a.owner_id, a.variant_key, a.model_year,
          a.series_key, a.serial, a.serial_ordinal, a.serial_suffix, o.seen_value, o.seen_on,
          row_number() over (
            partition by a.serial_ordinal, a.serial_suffix order by o.seen_on desc, o.id desc
          ) as age,
          min(case when a.serial_shown then 1 else 0 end) over (
            partition by a.serial_ordinal, a.serial_suffix
          ) as shown
        from observation o join airframe a on a.id = o.airframe_id
        where o.feature_key = :feature and a.series_key = :series
          and (cast(:variant as varchar) is null or a.variant_key = :variant)
      ) seen
      where age = 1 order by serial_ordinal, serial_suffix
      """;

  private final JdbcClient jdbc;

  Sightings(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /**
   * The latest observation of a feature on each airframe of a series, in the order of serials.
   *
   * @param feature key of the feature
   * @param series key of the series
   * @param variant key of the variant that airframes must be of; null for any
   */
  public List<Sighting> latest(String feature, String series, @Nullable String variant) {
    return jdbc.sql(LATEST)
        .param("feature", feature)
        .param("series", series)
        .param("variant", variant)
        .query((row, n) -> sighting(row))
        .list();
  }

  private static Sighting sighting(ResultSet row) throws SQLException {
    String suffix = row.getString("serial_suffix");
    return new Sighting(
        row.getLong("observation"),
        row.getLong("airframe"),
        row.getLong("owner_id"),
        row.getString("variant_key"),
        row.getObject("model_year", Integer.class),
        row.getString("series_key"),
        new Serial(
            row.getLong("serial_ordinal"), suffix.isEmpty() ? Serial.NO_SUFFIX : suffix.charAt(0)),
        row.getString("serial"),
        row.getInt("shown") == 1,
        row.getString("seen_value"),
        row.getObject("seen_on", LocalDate.class));
  }

  /**
   * Notes what a correction stands on, in place of what was noted for the same change and variant.
   * Once the correction is published, this is what remains of observations that are deleted.
   *
   * @param correction number of the correction
   */
  @Transactional
  public void use(long correction, Uses used) {
    jdbc.sql(
            """
            delete from used_observation
            where correction_id = :correction and change_key = :change and variant_key = :variant
            """)
        .param("correction", correction)
        .param("change", used.change())
        .param("variant", used.variant())
        .update();
    for (Use use : used.uses()) {
      jdbc.sql(
              """
              insert into used_observation
                (correction_id, change_key, variant_key, observation_id, shows_new, place)
              values (:correction, :change, :variant, :observation, :new, :place)
              """)
          .param("correction", correction)
          .param("change", used.change())
          .param("variant", used.variant())
          .param("observation", use.observation())
          .param("new", use.showsNew())
          .param("place", use.place().name())
          .update();
    }
  }

  /** What published corrections of a change stand on, for one variant. */
  public List<UsedObservation> published(String change, String variant) {
    return jdbc.sql(
            """
            select u.shows_new, u.place, u.observation_id is not null as kept
            from used_observation u join correction c on c.id = u.correction_id
            where u.change_key = :change and u.variant_key = :variant and c.revision is not null
            order by u.id
            """)
        .param("change", change)
        .param("variant", variant)
        .query(
            (row, n) ->
                new UsedObservation(
                    row.getBoolean("shows_new"),
                    Place.valueOf(row.getString("place")),
                    row.getBoolean("kept")))
        .list();
  }

  /** On how many observations of an airframe published corrections stand. */
  long published(long airframe) {
    return jdbc.sql(
            """
            select count(distinct o.id)
            from used_observation u
              join observation o on o.id = u.observation_id
              join correction c on c.id = u.correction_id
            where o.airframe_id = :airframe and c.revision is not null
            """)
        .param("airframe", airframe)
        .query(Long.class)
        .single();
  }

  /** Forgets that unpublished corrections stand on what was seen on an airframe. */
  void forgetUnpublished(Airframe airframe) {
    jdbc.sql(
            """
            delete from used_observation
            where observation_id in (select id from observation where airframe_id = :airframe)
              and correction_id in (select id from correction where revision is null)
            """)
        .param("airframe", airframe.id())
        .update();
  }

  /** Forgets that unpublished corrections stand on an observation. */
  void forgetUnpublished(Observation observation) {
    jdbc.sql(
            """
            delete from used_observation
            where observation_id = :observation
              and correction_id in (select id from correction where revision is null)
            """)
        .param("observation", observation.id())
        .update();
  }
}
