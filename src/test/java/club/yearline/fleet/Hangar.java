package club.yearline.fleet;

import club.yearline.Yearline;
import club.yearline.accounts.AccountClosed;
import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.catalog.Edition;
import club.yearline.catalog.Publication;
import club.yearline.catalog.Snapshots;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Question;
import club.yearline.testing.Database;
import club.yearline.testing.Sample;
import club.yearline.testing.SignedIn;
import club.yearline.uploads.Evidence;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The whole application without its pages on a fresh database, with {@link Sample#turnstone()} as
 * revision 1 and some people.
 */
final class Hangar implements AutoCloseable {

  static final LocalDate DAY = LocalDate.of(2026, 5, 31);

  final Actor member;
  final Actor other;
  final Actor keeper;
  private final ConfigurableApplicationContext context;

  private Hangar(ConfigurableApplicationContext context) {
    this.context = context;
    member = SignedIn.person(context, "Mette Member", Role.MEMBER);
    other = SignedIn.person(context, "Odd Other", Role.MEMBER);
    keeper = SignedIn.person(context, "Kari Keeper", Role.KEEPER);
    context.getBean(Publication.class).publish(Edition.of("Published", "Å", Sample.turnstone()));
  }

  static Hangar on(Database database) {
    return new Hangar(
        new SpringApplicationBuilder(Yearline.class)
            .web(WebApplicationType.NONE)
            .run(
                "--yearline.demo=false",
                "--spring.datasource.url=" + database.url(),
                "--spring.datasource.username=" + database.user(),
                "--spring.datasource.password=" + database.password()));
  }

  <T> T bean(Class<T> type) {
    return context.getBean(type);
  }

  Register register() {
    return bean(Register.class);
  }

  Sightings sightings() {
    return bean(Sightings.class);
  }

  JdbcClient jdbc() {
    return bean(JdbcClient.class);
  }

  TransactionTemplate transactions() {
    return bean(TransactionTemplate.class);
  }

  /** A serial as the engine reads it. */
  Position position(String serial) {
    Located located =
        bean(Snapshots.class).head().catalogue().locate(new Question(null, null, serial));
    return ((Located.Found) located).position();
  }

  NewAirframe airframe(String serial) {
    return new NewAirframe(position(serial), null, null);
  }

  /** Registers an airframe, with one observation of its door latch. */
  long inspected(Actor actor, String serial, String latch) {
    return register().store(actor, inspection(serial, latch));
  }

  Inspected inspection(String serial, String latch) {
    return Inspected.of(UUID.randomUUID(), airframe(serial), List.of(latch(latch, DAY)));
  }

  static Seen latch(String value, LocalDate on, Evidence... photographs) {
    return new Seen("door-latch", value, on, null, null, List.of(photographs));
  }

  List<Sighting> latches(@Nullable String variant) {
    return sightings().latest("door-latch", "lt", variant);
  }

  void agree(Actor owner, long airframe) {
    transactions()
        .executeWithoutResult(status -> bean(Keeping.class).own(owner, airframe).showSerial(true));
  }

  void share(Actor owner, long airframe) {
    transactions()
        .executeWithoutResult(status -> bean(Keeping.class).own(owner, airframe).share(true));
  }

  long count(String table) {
    return jdbc().sql("select count(*) from " + table).query(Long.class).single();
  }

  /** Nothing is registered, as at the start. */
  void empty() {
    jdbc().sql("delete from used_observation").update();
    jdbc().sql("delete from stored_inspection").update();
    jdbc().sql("delete from airframe").update();
    jdbc().sql("delete from correction").update();
  }

  void tell(AccountClosed closed) {
    transactions().executeWithoutResult(status -> context.publishEvent(closed));
  }

  @Override
  public void close() {
    context.close();
  }
}
