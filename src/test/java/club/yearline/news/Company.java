package club.yearline.news;

import club.yearline.Yearline;
import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.testing.Database;
import club.yearline.testing.SignedIn;
import java.util.stream.Stream;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** The whole application without its pages, with some people and something published. */
final class Company implements AutoCloseable {

  final Actor member;
  final Actor other;
  final Actor moderator;
  final Actor second;
  private final ConfigurableApplicationContext context;

  private Company(ConfigurableApplicationContext context) {
    this.context = context;
    member = SignedIn.person(context, "Mette Member", Role.MEMBER);
    other = SignedIn.person(context, "Odd Other", Role.MEMBER);
    moderator = SignedIn.person(context, "Mona Moderator", Role.MODERATOR);
    second = SignedIn.person(context, "Sven Second", Role.MODERATOR);
    newsroom().start();
  }

  static Company on(Database database, String... settings) {
    return new Company(
        new SpringApplicationBuilder(Yearline.class, Newsroom.class)
            .web(WebApplicationType.NONE)
            .properties(settings)
            .run(
                "--yearline.demo=false",
                "--spring.datasource.url=" + database.url(),
                "--spring.datasource.username=" + database.user(),
                "--spring.datasource.password=" + database.password()));
  }

  Stream<Actor> everybody() {
    return Stream.of(member, other, moderator, second);
  }

  Actor named(String who) {
    return switch (who) {
      case "member" -> member;
      case "other" -> other;
      case "moderator" -> moderator;
      default -> second;
    };
  }

  /** Says in a transaction that something happened. */
  void tell(Object event) {
    transactions().executeWithoutResult(status -> context.publishEvent(event));
  }

  Newsroom newsroom() {
    return context.getBean(Newsroom.class);
  }

  Watches watches() {
    return context.getBean(Watches.class);
  }

  Messages messages() {
    return context.getBean(Messages.class);
  }

  MessageWords words() {
    return context.getBean(MessageWords.class);
  }

  MailWishes wishes() {
    return context.getBean(MailWishes.class);
  }

  Outbox outbox() {
    return context.getBean(Outbox.class);
  }

  Tallies tallies() {
    return context.getBean(Tallies.class);
  }

  Noting noting() {
    return context.getBean(Noting.class);
  }

  FeedName feedName() {
    return context.getBean(FeedName.class);
  }

  JdbcClient jdbc() {
    return context.getBean(JdbcClient.class);
  }

  TransactionTemplate transactions() {
    return context.getBean(TransactionTemplate.class);
  }

  /** Made here, because without pages the application runs none. */
  Forgetting forgetting() {
    return context.getAutowireCapableBeanFactory().createBean(Forgetting.class);
  }

  /** Made here, likewise; each call makes what another instance would run. */
  Delivery delivery() {
    return context.getAutowireCapableBeanFactory().createBean(Delivery.class);
  }

  @Override
  public void close() {
    context.close();
  }
}
