package club.yearline.accounts;

import club.yearline.web.Phrases;
import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Seals at the start what lies open or is sealed with a former key, and says what cannot be read.
 * As often as it is done, and by however many instances, nothing is lost.
 */
@Component
class SealingAtStart {

  private static final Logger log = LoggerFactory.getLogger(SealingAtStart.class);

  private final JdbcClient jdbc;
  private final Seal seal;
  private final SealingKeys keys;
  private final Phrases phrases;

  SealingAtStart(JdbcClient jdbc, Seal seal, SealingKeys keys, Phrases phrases) {
    this.jdbc = jdbc;
    this.seal = seal;
    this.keys = keys;
    this.phrases = phrases;
  }

  private record Stored(long person, String secret) {}

  @EventListener(ApplicationReadyEvent.class)
  void on() {
    if (keys.areMissing()) {
      log.warn(phrases.of("start.unsealed"));
    }
    List<Stored> all =
        jdbc.sql("select id, totp_secret from person where totp_secret is not null")
            .query((row, n) -> new Stored(row.getLong(1), row.getString(2)))
            .list();
    long lost = all.stream().filter(stored -> !isReadable(stored)).count();
    if (lost > 0) {
      log.error(phrases.of("start.sealed-shut", lost));
    }
    all.stream().filter(this::isReadable).forEach(this::sealToday);
  }

  private boolean isReadable(Stored stored) {
    return seal.open(stored.person(), stored.secret()).isPresent();
  }

  private void sealToday(Stored stored) {
    if (!seal.isToday(stored.secret())) {
      jdbc.sql("update person set totp_secret = :sealed where id = :id and totp_secret = :stored")
          .param(
              "sealed",
              seal.open(stored.person(), stored.secret())
                  .map(secret -> seal.close(stored.person(), secret))
                  .orElseThrow())
          .param("id", stored.person())
          .param("stored", stored.secret())
          .update();
    }
  }
}
