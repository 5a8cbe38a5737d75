package club.yearline.evidence;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Airframes of the register with one observation each, as rows. */
final class RegisterRows {

  private final JdbcClient jdbc;
  private final long owner;

  RegisterRows(JdbcClient jdbc, long owner) {
    this.jdbc = jdbc;
    this.owner = owner;
  }

  /** An airframe of LA-2B and what was seen on it. */
  void seen(int ordinal, boolean serialShown, String feature, String value) {
    seen("la-2b", ordinal, serialShown, feature, value);
  }

  /** An airframe of the series LT and what was seen on it. */
  void seen(String variant, int ordinal, boolean serialShown, String feature, String value) {
    long airframe = next("airframe_seq");
    jdbc.sql(
            """
            insert into airframe (id, lock_version, owner_id, variant_key, series_key, serial,
              serial_ordinal, serial_suffix, shared, serial_shown, registered_at, changed_at,
              form_token)
            values (:id, 0, :owner, :variant, 'lt', :serial, :ordinal, '', :shown, :shown, :at, :at,
              :token)
            """)
        .param("id", airframe)
        .param("owner", owner)
        .param("variant", variant)
        .param("serial", "LT-%04d".formatted(ordinal))
        .param("ordinal", ordinal)
        .param("shown", serialShown)
        .param("at", Instant.parse("2026-05-01T10:00:00Z").atOffset(ZoneOffset.UTC))
        .param("token", UUID.randomUUID().toString())
        .update();
    jdbc.sql(
            """
            insert into observation (id, airframe_id, feature_key, seen_value, seen_on,
              recorded_at, form_token)
            values (:id, :airframe, :feature, :value, :on, :at, :token)
            """)
        .param("id", next("observation_seq"))
        .param("airframe", airframe)
        .param("feature", feature)
        .param("value", value)
        .param("on", LocalDate.of(2026, 11, 25).minusDays(ordinal % 90))
        .param("at", Instant.parse("2026-11-25T10:00:00Z").atOffset(ZoneOffset.UTC))
        .param("token", UUID.randomUUID().toString())
        .update();
  }

  private long next(String sequence) {
    return jdbc.sql("select next value for " + sequence).query(Long.class).single();
  }
}
