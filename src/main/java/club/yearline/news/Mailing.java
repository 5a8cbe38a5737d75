package club.yearline.news;

import club.yearline.accounts.Club;
import club.yearline.accounts.People;
import club.yearline.web.Phrases;
import jakarta.mail.MessagingException;
import jakarta.mail.internet.AddressException;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.mail.javamail.JavaMailSender;
import org.springframework.mail.javamail.MimeMessageHelper;
import org.springframework.stereotype.Component;

/** Writes mails about messages, and sends them where a mail server is configured. */
@Component
class Mailing {

  /** A digest lists so many; the inbox has the rest. */
  private static final int MOST_LISTED = 100;

  private static final int LONGEST_SUBJECT = 150;

  private final ObjectProvider<JavaMailSender> sender;
  private final PublicAddress address;
  private final MessageWords words;
  private final People people;
  private final Club club;
  private final Phrases phrases;
  private final String from;

  Mailing(
      ObjectProvider<JavaMailSender> sender,
      PublicAddress address,
      MessageWords words,
      People people,
      Club club,
      Phrases phrases,
      @Value("${yearline.mail-from:}") String from) {
    this.sender = sender;
    this.address = address;
    this.words = words;
    this.people = people;
    this.club = club;
    this.phrases = phrases;
    this.from = from.strip();
    if (!this.from.isEmpty()) {
      requireAddress(this.from);
    }
  }

  /** Said at the start: otherwise every mail would be lost for it. */
  private static void requireAddress(String from) {
    try {
      new InternetAddress(from, true);
    } catch (AddressException e) {
      throw new IllegalArgumentException(
          "yearline.mail-from must be a mail address, such as catalogue@club.example, and is: "
              + from,
          e);
    }
  }

  /** Whether mail can be sent: a server, a sender, and an address for the links in it. */
  boolean isSet() {
    return !from.isEmpty() && address.isConfigured() && sender.getIfAvailable() != null;
  }

  /**
   * Sends a mail.
   *
   * @param to where the person is reached
   * @throws org.springframework.mail.MailException if the server did not take it
   * @throws MessagingException if it cannot be written, such as to an address that is none
   */
  void send(OutgoingMail mail, String to, List<Message> messages) throws MessagingException {
    List<String> texts = words.say(messages);
    JavaMailSender server = sender.getObject();
    MimeMessage message = server.createMimeMessage();
    MimeMessageHelper helper = new MimeMessageHelper(message, StandardCharsets.UTF_8.name());
    helper.setValidateAddresses(true);
    helper.setFrom(from);
    helper.setTo(to);
    helper.setSubject(subject(mail, texts));
    helper.setText(text(mail, messages, texts));
    // The same however often it is tried, so that a mail server can tell.
    message.setHeader("Message-ID", "<news-" + mail.id() + "@" + host() + ">");
    message.setHeader("Auto-Submitted", "auto-generated");
    message.setHeader("List-Unsubscribe", "<" + address.configured("/inbox#mail") + ">");
    server.send(message);
  }

  private String subject(OutgoingMail mail, List<String> texts) {
    String name = club.name().isEmpty() ? phrases.of("site.name") : club.name();
    String subject =
        mail.digest()
            ? phrases.count("news.mail.digest.subject", texts.size(), name)
            : phrases.of("news.mail.each.subject", name, texts.get(0));
    String line = MessageWords.oneLine(subject);
    int end = Math.min(LONGEST_SUBJECT, line.codePointCount(0, line.length()));
    return line.substring(0, line.offsetByCodePoints(0, end));
  }

  private String text(OutgoingMail mail, List<Message> messages, List<String> texts) {
    List<String> paragraphs = new ArrayList<>();
    paragraphs.add(phrases.of("news.mail.greeting", people.nameOf(mail.person())));
    int listed = Math.min(MOST_LISTED, messages.size());
    for (int i = 0; i < listed; i++) {
      paragraphs.add(texts.get(i) + "\n" + address.configured("/inbox/" + messages.get(i).id()));
    }
    if (messages.size() > listed) {
      paragraphs.add(phrases.of("news.mail.more", messages.size() - listed));
    }
    paragraphs.add(phrases.of("news.mail.foot", address.configured("/inbox#mail")));
    return String.join("\n\n", paragraphs) + "\n";
  }

  private String host() {
    return URI.create(address.configured("/")).getHost();
  }
}
