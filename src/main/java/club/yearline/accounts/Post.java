package club.yearline.accounts;

import club.yearline.web.Phrases;
import jakarta.annotation.PreDestroy;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.mail.MailException;
import org.springframework.mail.SimpleMailMessage;
import org.springframework.mail.javamail.JavaMailSender;
import org.springframework.stereotype.Component;

/**
 * Sends mail about accounts, where a mail server is configured. Sending happens behind the answer,
 * so that its time tells nobody whether there was somebody to write to.
 */
@Component
class Post {

  private static final Logger log = LoggerFactory.getLogger(Post.class);

  private static final int MOST_WAITING = 200;

  private final ObjectProvider<JavaMailSender> sender;
  private final Addresses addresses;
  private final Phrases phrases;
  private final Club club;
  private final String from;
  private final ThreadPoolExecutor worker =
      new ThreadPoolExecutor(
          1, 1, 1, TimeUnit.MINUTES, new ArrayBlockingQueue<>(MOST_WAITING), Post::thread);

  Post(
      ObjectProvider<JavaMailSender> sender,
      Addresses addresses,
      Phrases phrases,
      Club club,
      @Value("${yearline.mail-from:}") String from) {
    this.sender = sender;
    this.addresses = addresses;
    this.phrases = phrases;
    this.club = club;
    this.from = from.strip();
  }

  /** Whether mail can be sent: a server, a sender, and an address for the links in it. */
  boolean isSet() {
    return sender.getIfAvailable() != null && !from.isEmpty() && addresses.isKnown();
  }

  /** Does something behind the answer: looks up who to write to, and writes. */
  void later(Runnable work) {
    try {
      worker.execute(work);
    } catch (RejectedExecutionException e) {
      log.warn("Too much mail waits to be sent; one is left out");
    }
  }

  /** Sends a mail whose texts are {@code KEY.subject} and {@code KEY.text}. */
  void send(EmailAddress to, String key, Object... arguments) {
    SimpleMailMessage mail = new SimpleMailMessage();
    mail.setFrom(from);
    mail.setTo(to.text());
    mail.setSubject(oneLine(phrases.of(key + ".subject", clubName())));
    mail.setText(phrases.of(key + ".text", arguments));
    try {
      sender.getObject().send(mail);
    } catch (MailException e) {
      log.warn("A mail could not be sent: {}", e.getMessage());
    }
  }

  /** Tells the owner of an account what was changed about it, in case it was somebody else. */
  void tell(Account account, String key) {
    Optional<EmailAddress> email = EmailAddress.of(account.email());
    if (isSet() && email.isPresent()) {
      later(() -> send(email.get(), key));
    }
  }

  /** The club's name, or the application's where it has none. */
  String clubName() {
    return club.name().isEmpty() ? phrases.of("site.name") : club.name();
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\p{Cntrl}+", " ");
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "post");
    thread.setDaemon(true);
    return thread;
  }

  @PreDestroy
  void stop() {
    worker.shutdown();
  }
}
