package club.yearline.news;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** Keeps the inboxes from growing for ever. What it does twice does no harm. */
@Component
@ConditionalOnWebApplication
class Forgetting {

  static final int KEPT_DAYS = 365;
  static final int KEPT_EACH = 500;

  private static final Logger log = LoggerFactory.getLogger(Forgetting.class);

  private static final String BEYOND =
      """
      delete from message where id in (
        select id from (
          select id, row_number() over (partition by person_id order by id desc) as place
          from message) ranked
        where place > :most)
      """;

  private static final String UNTIED =
      """
      update message set mail_id = null where mail_id in (
        select id from outgoing_mail where state in ('SENT', 'DROPPED') and since < :before)
      """;

  private static final String ENDED =
      """
      delete from outgoing_mail where state in ('SENT', 'DROPPED') and since < :before
        and not exists (select 1 from message where mail_id = outgoing_mail.id)
      """;

  /** Who was told something while leaving; all else went with the account. */
  private static final String OF_WHO_LEFT =
      "delete from message where person_id in (select id from person where state = 'CLOSED')";

  private final JdbcClient jdbc;
  private final TransactionTemplate transactions;

  Forgetting(JdbcClient jdbc, TransactionTemplate transactions) {
    this.jdbc = jdbc;
    this.transactions = transactions;
  }

  @Scheduled(initialDelay = 5, fixedDelay = 360, timeUnit = TimeUnit.MINUTES)
  void round() {
    try {
      forget(Instant.now());
    } catch (DataAccessException e) {
      // The next round does it.
      log.warn("Old messages could not be deleted: {}", e.getMessage());
    }
  }

  void forget(Instant now) {
    OffsetDateTime before = now.minus(KEPT_DAYS, ChronoUnit.DAYS).atOffset(ZoneOffset.UTC);
    transactions.executeWithoutResult(
        t -> {
          jdbc.sql("delete from message where sent_at < :before").param("before", before).update();
          jdbc.sql(OF_WHO_LEFT).update();
          jdbc.sql(BEYOND).param("most", KEPT_EACH).update();
          for (String sql : List.of(UNTIED, ENDED)) {
            jdbc.sql(sql).param("before", before).update();
          }
        });
  }
}
