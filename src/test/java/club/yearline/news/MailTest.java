package club.yearline.news;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import club.yearline.accounts.AccountClosed;
import club.yearline.accounts.JoinAsked;
import club.yearline.corrections.CorrectionMoved;
import club.yearline.testing.Database;
import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.Message.RecipientType;
import jakarta.mail.internet.MimeMessage;
import java.io.IOException;
import java.net.ServerSocket;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Mail, against a real mail server within the test. */
class MailTest {

  private static final int PORT = freePort();

  private static Company company;
  private GreenMail server;

  private static int freePort() {
    try (ServerSocket socket = new ServerSocket(0)) {
      return socket.getLocalPort();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @BeforeAll
  static void open() {
    company =
        Company.on(
            Database.h2(),
            "spring.mail.host=127.0.0.1",
            "spring.mail.port=" + PORT,
            "yearline.mail-from=catalogue@club.example",
            "yearline.address=https://catalogue.example");
  }

  @AfterAll
  static void close() {
    company.close();
  }

  @BeforeEach
  void nobodyHasAnything() {
    company.everybody().forEach(person -> company.tell(new AccountClosed(person.id())));
    startServer();
  }

  @AfterEach
  void stopServer() {
    server.stop();
  }

  private void startServer() {
    server = new GreenMail(new ServerSetup(PORT, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
    server.start();
  }

  private static void sendBack(String title) {
    company.tell(
        new CorrectionMoved(
            7, title, "sent-back", company.member.id(), company.moderator.id(), "Which page?"));
  }

  private List<MimeMessage> received() {
    return List.of(server.getReceivedMessages());
  }

  @Test
  void whoWantsEachMessageByMailGetsItOnceWithALinkAndAWayOut() throws Exception {
    company.wishes().set(company.member.id(), MailWish.EACH);
    sendBack("The latch came later");
    assertThat(received()).isEmpty();
    company.delivery().deliver(Instant.now());
    company.delivery().deliver(Instant.now());
    company.delivery().deliver(Instant.now().plus(Duration.ofDays(2)));
    assertThat(received()).hasSize(1);
    MimeMessage mail = received().get(0);
    assertThat(mail.getRecipients(RecipientType.TO)).hasSize(1);
    assertThat(mail.getRecipients(RecipientType.TO)[0]).hasToString("mette.member@club.example");
    assertThat(mail.getFrom()[0]).hasToString("catalogue@club.example");
    assertThat(mail.getSubject())
        .isEqualTo(
            "Yearline: Your correction “The latch came later” was sent back by Mona Moderator,"
                + " with what to improve.");
    assertThat(mail.getContentType()).startsWith("text/plain");
    long id = company.messages().of(company.member.id(), 0, 1).get(0).id();
    assertThat(mail.getContent().toString())
        .contains("Hello Mette Member,", "was sent back by Mona Moderator")
        .contains("https://catalogue.example/inbox/" + id)
        .doesNotContain("Which page?");
    assertThat(mail.getHeader("List-Unsubscribe"))
        .containsExactly("<https://catalogue.example/inbox#mail>");
    assertThat(mail.getHeader("Auto-Submitted")).containsExactly("auto-generated");
    assertThat(mail.getMessageID()).endsWith("@catalogue.example>");
  }

  @Test
  void whoHasNotAskedForMailGetsNone() {
    sendBack("The latch");
    company.wishes().set(company.member.id(), MailWish.NONE);
    sendBack("The latch again");
    company.delivery().deliver(Instant.now().plus(Duration.ofDays(2)));
    assertThat(received()).isEmpty();
    assertThat(company.messages().unread(company.member.id())).isEqualTo(2);
  }

  @Test
  void aDigestGathersTheUnreadOfADayOnTheNextMorning() throws Exception {
    company.wishes().set(company.member.id(), MailWish.DAILY);
    sendBack("First");
    sendBack("Second");
    sendBack("Third");
    long read = company.messages().of(company.member.id(), 1, 1).get(0).id();
    company.messages().read(read, company.member.id());
    company.delivery().deliver(Instant.now());
    assertThat(received()).isEmpty();
    company.delivery().deliver(Instant.now().plus(Duration.ofHours(31)));
    assertThat(received()).hasSize(1);
    assertThat(received().get(0).getSubject()).isEqualTo("Yearline: 2 messages");
    assertThat(received().get(0).getContent().toString())
        .contains("“First”", "“Third”")
        .doesNotContain("“Second”");
  }

  @Test
  void aServerThatIsDownIsTriedAgainLaterAndLater() {
    company.wishes().set(company.member.id(), MailWish.EACH);
    server.stop();
    sendBack("The latch");
    Instant now = Instant.now();
    company.delivery().deliver(now);
    startServer();
    company.delivery().deliver(now.plusSeconds(59));
    assertThat(received()).isEmpty();
    company.delivery().deliver(now.plusSeconds(60));
    company.delivery().deliver(now.plusSeconds(6000));
    assertThat(received()).hasSize(1);
    assertThat(List.of(0, 1, 2, 3, 9)).extracting(Delivery::wait).isSorted();
  }

  @Test
  void aServerThatStaysDownIsGivenUp() {
    company.wishes().set(company.member.id(), MailWish.EACH);
    server.stop();
    sendBack("The latch");
    Instant now = Instant.now();
    for (int i = 0; i < 12; i++) {
      now = now.plus(Duration.ofHours(7));
      company.delivery().deliver(now);
    }
    startServer();
    company.delivery().deliver(now.plus(Duration.ofDays(9)));
    assertThat(received()).isEmpty();
  }

  @Test
  void whatWasBeingSentWhenAnInstanceDiedIsNotSentTwice() {
    company.wishes().set(company.member.id(), MailWish.EACH);
    sendBack("The latch");
    Instant now = Instant.now();
    OutgoingMail mail = company.outbox().due(now, 1).get(0);
    assertThat(company.outbox().claim(mail, now)).isTrue();
    company.delivery().deliver(now.plusSeconds(60));
    company.delivery().deliver(now.plus(Duration.ofHours(1)));
    company.delivery().deliver(now.plus(Duration.ofHours(9)));
    assertThat(received()).isEmpty();
  }

  @Test
  void ofSeveralInstancesOneSendsAMail() throws Exception {
    company.wishes().set(company.moderator.id(), MailWish.EACH);
    for (int i = 0; i < 10; i++) {
      company.tell(new JoinAsked(i));
    }
    CountDownLatch go = new CountDownLatch(1);
    List<Thread> instances =
        java.util.stream.IntStream.range(0, 4)
            .mapToObj(
                i ->
                    new Thread(
                        () -> {
                          Delivery delivery = company.delivery();
                          awaitUninterruptibly(go);
                          delivery.deliver(Instant.now());
                        }))
            .toList();
    instances.forEach(Thread::start);
    go.countDown();
    for (Thread instance : instances) {
      instance.join();
    }
    assertThat(received()).hasSize(10);
  }

  private static void awaitUninterruptibly(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void aTitleCannotAddHeadersOrRecipients() throws Exception {
    company.wishes().set(company.member.id(), MailWish.EACH);
    sendBack(
        "Latch\r\nBcc: victim@elsewhere.example\r\nX-Evil: 1\r\n\r\n<script>alert(1)</script>");
    company.delivery().deliver(Instant.now());
    assertThat(received()).hasSize(1);
    MimeMessage mail = received().get(0);
    assertThat(mail.getAllRecipients()).hasSize(1);
    assertThat(mail.getHeader("X-Evil")).isNull();
    assertThat(mail.getHeader("Bcc")).isNull();
    assertThat(mail.getSubject()).contains("Latch Bcc: victim@elsewhere.example");
    assertThat(mail.getContentType()).startsWith("text/plain");
  }

  @Test
  void whoHasLeftOrChangedTheirMindGetsNoMail() {
    company.wishes().set(company.member.id(), MailWish.EACH);
    sendBack("The latch");
    company.wishes().set(company.member.id(), MailWish.NONE);
    company.wishes().set(company.moderator.id(), MailWish.EACH);
    company.tell(new JoinAsked(1));
    company.tell(new AccountClosed(company.moderator.id()));
    company.delivery().deliver(Instant.now());
    assertThat(received()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"catalogue", "a@b.example\r\nBcc: c@d.example", "@club.example"})
  void aSenderThatIsNoAddressIsRefusedAtTheStart(String from) {
    assertThatThrownBy(() -> new Mailing(null, null, null, null, null, null, from))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("yearline.mail-from");
  }
}
