package club.yearline.news;

import club.yearline.accounts.People;
import jakarta.annotation.PreDestroy;
import jakarta.mail.MessagingException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.dao.DataAccessException;
import org.springframework.mail.MailException;
import org.springframework.stereotype.Component;

/**
 * Sends what waits in the outbox, on a thread of its own: a slow mail server keeps nobody waiting.
 * Each mail is claimed first, so that of several instances one sends it; a mail that was being sent
 * when an instance died is given up rather than sent twice.
 */
@Component
@ConditionalOnWebApplication
class Delivery {

  private static final Logger log = LoggerFactory.getLogger(Delivery.class);

  private static final int MOST_TRIES = 8;
  private static final int AT_ONCE = 50;
  private static final Duration FIRST_WAIT = Duration.ofMinutes(1);
  private static final Duration LONGEST_WAIT = Duration.ofHours(6);

  /** Longer than sending can take, by the time limits of the connection. */
  private static final Duration SENDING_ENDS = Duration.ofMinutes(15);

  private static final Duration STOPPING = Duration.ofSeconds(15);

  private final Outbox outbox;
  private final Messages messages;
  private final MailWishes wishes;
  private final People people;
  private final Mailing mailing;
  private final Duration every;
  private final ScheduledExecutorService worker =
      Executors.newSingleThreadScheduledExecutor(Delivery::thread);

  Delivery(
      Outbox outbox,
      Messages messages,
      MailWishes wishes,
      People people,
      Mailing mailing,
      @Value("${yearline.mail-every:10s}") Duration every) {
    this.outbox = outbox;
    this.messages = messages;
    this.wishes = wishes;
    this.people = people;
    this.mailing = mailing;
    this.every = every;
  }

  @EventListener(ApplicationReadyEvent.class)
  void start() {
    if (mailing.isSet()) {
      worker.scheduleWithFixedDelay(
          this::round, every.toMillis(), every.toMillis(), TimeUnit.MILLISECONDS);
    }
  }

  /** A failed round must not be the last one. */
  private void round() {
    try {
      deliver(Instant.now());
    } catch (DataAccessException e) {
      log.warn("Cannot look for mail to send: {}", e.getMessage());
    } catch (RuntimeException e) {
      log.error("Mail was not sent", e);
    }
  }

  /** Sends what is due at a moment. */
  void deliver(Instant now) {
    int unknown = outbox.dropUnknown(now.minus(SENDING_ENDS), now);
    if (unknown > 0) {
      log.warn("{} mails were being sent when an instance stopped; they are given up", unknown);
    }
    for (OutgoingMail mail : outbox.due(now, AT_ONCE)) {
      if (outbox.claim(mail, now)) {
        send(mail, now);
      }
    }
  }

  private void send(OutgoingMail mail, Instant now) {
    List<Message> told = messages.unreadOf(mail);
    Optional<String> to = people.mailOf(mail.person());
    if (told.isEmpty() || to.isEmpty() || wishes.of(mail.person()) == MailWish.NONE) {
      outbox.drop(mail, now);
      return;
    }
    try {
      mailing.send(mail, to.get(), told);
      outbox.sent(mail, now);
    } catch (MessagingException e) {
      log.warn("Mail {} cannot be written: {}", mail.id(), e.getMessage());
      outbox.drop(mail, now);
    } catch (MailException e) {
      postpone(mail, now, e);
    }
  }

  private void postpone(OutgoingMail mail, Instant now, MailException e) {
    log.warn("Mail {} was not taken, try {}: {}", mail.id(), mail.tries() + 1, e.getMessage());
    if (mail.tries() + 1 >= MOST_TRIES) {
      outbox.drop(mail, now);
    } else {
      outbox.retry(mail, now.plus(wait(mail.tries())), now);
    }
  }

  /** One minute after the first try, four times as long after each further one. */
  static Duration wait(int tries) {
    Duration wait = FIRST_WAIT.multipliedBy(1L << (2 * Math.min(tries, MOST_TRIES)));
    return wait.compareTo(LONGEST_WAIT) < 0 ? wait : LONGEST_WAIT;
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "mail");
    thread.setDaemon(true);
    return thread;
  }

  /** What is being sent may end, so that it is known to have been. */
  @PreDestroy
  void stop() throws InterruptedException {
    worker.shutdown();
    worker.awaitTermination(STOPPING.toSeconds(), TimeUnit.SECONDS);
  }
}
