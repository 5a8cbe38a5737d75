package club.yearline.exchange;

import club.yearline.accounts.DemoPeople;
import club.yearline.accounts.DemoPeople.Invited;
import club.yearline.accounts.People;
import club.yearline.accounts.Role;
import club.yearline.catalog.Revision;
import club.yearline.catalog.Snapshots;
import club.yearline.fleet.RegisterFilling;
import club.yearline.fleet.RegisterFilling.Given;
import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.stereotype.Component;

/**
 * Loads the demo catalogue into an empty database at start, so that somebody who tries Yearline
 * sees more than an empty list. On by default with the embedded database, off with any other, and
 * for every command but serving.
 */
@Component
@ConditionalOnWebApplication
class DemoLoader implements ApplicationRunner {

  static final String FOLDER = "seed-data/demo";

  private static final Logger log = LoggerFactory.getLogger(DemoLoader.class);

  private final Importing importing;
  private final Snapshots snapshots;
  private final DemoPeople people;
  private final People members;
  private final RegisterFilling register;
  private final DataSource database;
  private final @Nullable Boolean wanted;

  DemoLoader(
      Importing importing,
      Snapshots snapshots,
      DemoPeople people,
      People members,
      RegisterFilling register,
      DataSource database,
      @Value("${yearline.demo:#{null}}") @Nullable Boolean wanted) {
    this.importing = importing;
    this.snapshots = snapshots;
    this.people = people;
    this.members = members;
    this.register = register;
    this.database = database;
    this.wanted = wanted;
  }

  @Override
  public void run(ApplicationArguments arguments) throws IOException, SQLException {
    boolean on = wanted == null ? isEmbedded() : wanted;
    if (on && snapshots.head().number() == 0) {
      log.info(Texts.of("start.demo"));
      load(FOLDER);
    }
  }

  private void load(String folder) throws IOException {
    try (PackageFiles files = ResourceFiles.in(folder)) {
      Imported imported = importing.importFrom(files, Texts.of("import.note-demo"));
      Revision revision = imported.revision();
      if (revision != null) {
        log.info(Texts.of("start.demo-loaded", revision.number()));
        List<Invited> invited = people.invite();
        invited.forEach(DemoLoader::tell);
        if (!invited.isEmpty()) {
          fillRegister();
        }
        return;
      }
      imported.reading().problems().stream()
          .filter(PackageProblem::isError)
          .forEach(problem -> log.error(Texts.of("start.demo-refused", Texts.of(problem))));
    }
  }

  private static void tell(Invited person) {
    log.info(
        Texts.of(
            "start.demo-person",
            person.name(),
            person.role().name().toLowerCase(Locale.ROOT),
            person.email(),
            person.password()));
  }

  /** The invited are everybody, since nobody is invited where there is an account already. */
  private void fillRegister() {
    List<Given> airframes =
        new DemoRegister(
                snapshots.head().catalogue(), members.withRole(Role.MEMBER), DemoRegister.SEED)
            .make();
    if (register.fill(airframes)) {
      log.info(Texts.of("start.demo-register", airframes.size()));
    }
  }

  /** Whether the database is H2 within this process or its files, not one that is shared. */
  private boolean isEmbedded() throws SQLException {
    try (Connection connection = database.getConnection()) {
      String url = connection.getMetaData().getURL();
      return url.startsWith("jdbc:h2:")
          && !url.startsWith("jdbc:h2:tcp:")
          && !url.startsWith("jdbc:h2:ssl:");
    }
  }
}
