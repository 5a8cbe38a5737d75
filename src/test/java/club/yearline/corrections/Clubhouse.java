package club.yearline.corrections;

import club.yearline.Yearline;
import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.catalog.Edition;
import club.yearline.catalog.EntryRef;
import club.yearline.catalog.Publication;
import club.yearline.catalog.Snapshots;
import club.yearline.citation.Stance;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.EntryKind;
import club.yearline.tables.Sheet;
import club.yearline.testing.Database;
import club.yearline.testing.Sample;
import club.yearline.testing.SignedIn;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The whole application without its pages on a fresh database, with {@link Sample#turnstone()} as
 * revision 1, a member, two moderators and a keeper.
 */
final class Clubhouse implements AutoCloseable {

  static final EntryRef ROTARY = new EntryRef(EntryKind.CHANGE, "door-latch-rotary");

  final Actor member;
  final Actor other;
  final Actor moderator;
  final Actor second;
  private final ConfigurableApplicationContext context;

  private Clubhouse(ConfigurableApplicationContext context) {
    this.context = context;
    member = SignedIn.person(context, "Mette Member", Role.MEMBER);
    other = SignedIn.person(context, "Odd Other", Role.MEMBER);
    moderator = SignedIn.person(context, "Mona Moderator", Role.MODERATOR);
    second = SignedIn.person(context, "Sven Second", Role.MODERATOR);
    publish(Sample.turnstone());
  }

  static Clubhouse on(Database database) {
    return new Clubhouse(
        new SpringApplicationBuilder(Yearline.class)
            .web(WebApplicationType.NONE)
            .run(
                "--yearline.demo=false",
                "--spring.datasource.url=" + database.url(),
                "--spring.datasource.username=" + database.user(),
                "--spring.datasource.password=" + database.password()));
  }

  int publish(List<Entry> entries) {
    return context
        .getBean(Publication.class)
        .publish(Edition.of("Published", "Å", entries))
        .number();
  }

  /** Makes the catalogue as it was at the start, as one more revision. */
  void startOver() {
    publish(Sample.turnstone());
  }

  Drafting drafting() {
    return context.getBean(Drafting.class);
  }

  Attaching attaching() {
    return context.getBean(Attaching.class);
  }

  /** Those that wait and change what this one does. */
  List<Long> beside(long id) {
    return context
        .getBean(TransactionTemplate.class)
        .execute(
            status ->
                context.getBean(Corrections.class).waitingBeside(id).stream()
                    .map(Correction::id)
                    .toList());
  }

  CorrectionReading reading() {
    return context.getBean(CorrectionReading.class);
  }

  Moderation moderation() {
    return context.getBean(Moderation.class);
  }

  Snapshots snapshots() {
    return context.getBean(Snapshots.class);
  }

  JdbcClient jdbc() {
    return context.getBean(JdbcClient.class);
  }

  int head() {
    return snapshots().head().number();
  }

  Entry rotary() {
    return snapshots().head().entry(ROTARY).orElseThrow();
  }

  /** A correction as stored, with all its parts read. */
  Correction read(long id) {
    return context
        .getBean(TransactionTemplate.class)
        .execute(
            status -> {
              Correction correction = context.getBean(Corrections.class).findById(id).orElseThrow();
              correction.proposals();
              correction.grounds();
              correction.events();
              return correction;
            });
  }

  Review review(long id) {
    return context
        .getBean(TransactionTemplate.class)
        .execute(
            status ->
                context
                    .getBean(Reviews.class)
                    .of(context.getBean(Corrections.class).findById(id).orElseThrow()));
  }

  /** A draft of the member's that moves the rotary latch to another year. */
  long draft(int year) {
    return draft(member, sheet -> cutIn(sheet, "first_year", "settled_year", year));
  }

  long draft(Actor author, UnaryOperator<Sheet> edit) {
    Proposal proposal = new Proposal(ROTARY, edit.apply(Sheet.of(rotary())), head());
    return drafting()
        .begin(author, "The rotary latch came later", proposal, UUID.randomUUID().toString())
        .id();
  }

  /** The same, handed in with a source. */
  long submitted(int year) {
    return submit(draft(year));
  }

  long submit(long id) {
    Actor author = read(id).author() == member.id() ? member : moderator;
    drafting()
        .describe(
            author,
            id,
            version(id),
            "The rotary latch came later",
            List.of(Ground.of("parts-book", "p. 52-7", Stance.SUPPORTS, null)));
    drafting().submit(author, id, version(id), null);
    return id;
  }

  int version(long id) {
    return read(id).version();
  }

  static Sheet cutIn(Sheet sheet, String first, String settled, int year) {
    Map<String, String> row = new java.util.LinkedHashMap<>(sheet.rows("cut-ins").get(0));
    row.put(first, String.valueOf(year));
    row.put(settled, String.valueOf(year));
    return sheet.with("cut-ins", List.of(row));
  }

  @Override
  public void close() {
    context.close();
  }
}
