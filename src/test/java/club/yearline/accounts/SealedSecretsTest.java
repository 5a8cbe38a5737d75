package club.yearline.accounts;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.Yearline;
import club.yearline.testing.Database;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Secrets of second factors as they lie in the database, from one start to the next. */
@ExtendWith(OutputCaptureExtension.class)
class SealedSecretsTest {

  private static final String SECRET = OneTimeCodes.newSecret();

  @TempDir private Path folder;

  @Test
  void whatLayOpenIsSealedAtTheNextStartAndGoesOnWorking() {
    Database file =
        new Database(
            "jdbc:h2:file:"
                + folder.resolve("club")
                + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH",
            "sa",
            "");
    long person;
    try (ConfigurableApplicationContext first = start(file)) {
      person = person(first);
      layOpen(first, person);
      assertThat(stored(first, person)).isEqualTo(SECRET);
    }
    try (ConfigurableApplicationContext second = start(file)) {
      assertThat(stored(second, person)).doesNotContain(SECRET);
      assertThat(folder.resolve("club.key")).exists();
      assertThat(takes(second, person)).isTrue();
    }
    folder.resolve("club.key").toFile().delete();
  }

  @Test
  void onPostgresTheKeyIsThatOfTheSettingsAndCanBeChanged(CapturedOutput output) {
    Database database = Database.postgres();
    String one = SealingKey.fresh();
    String two = SealingKey.fresh();
    long person;
    try (ConfigurableApplicationContext open = start(database)) {
      assertThat(output).contains("lie unencrypted in the database");
      person = person(open);
      open.getBean(SecondFactors.class).prepare(person, SECRET);
      open.getBean(SecondFactors.class).switchOn(person);
      assertThat(stored(open, person)).isEqualTo(SECRET);
      assertThat(recoveryCodesLieHashed(open, person)).isTrue();
    }
    String sealed;
    try (ConfigurableApplicationContext first = start(database, "--yearline.secret-key=" + one)) {
      sealed = stored(first, person);
      assertThat(sealed).doesNotContain(SECRET);
      assertThat(takes(first, person)).isTrue();
    }
    try (ConfigurableApplicationContext lost = start(database, "--yearline.secret-key=" + two)) {
      assertThat(output).contains("that no code opens", "in the database: 1.");
      assertThat(stored(lost, person)).as("kept for the day the key is found").isEqualTo(sealed);
      assertThat(takes(lost, person)).isFalse();
    }
    try (ConfigurableApplicationContext changed =
        start(database, "--yearline.secret-key=" + two, "--yearline.former-secret-keys=" + one)) {
      assertThat(stored(changed, person)).isNotEqualTo(sealed).doesNotContain(SECRET);
    }
    try (ConfigurableApplicationContext after = start(database, "--yearline.secret-key=" + two)) {
      Account account = after.getBean(Accounts.class).find(person).orElseThrow();
      assertThat(after.getBean(SecondFactors.class).secretOf(account)).contains(SECRET);
    }
  }

  private static ConfigurableApplicationContext start(Database database, String... settings) {
    List<String> all =
        new ArrayList<>(
            List.of(
                "--yearline.demo=false",
                "--server.port=0",
                "--logging.level.root=warn",
                "--spring.datasource.url=" + database.url(),
                "--spring.datasource.username=" + database.user(),
                "--spring.datasource.password=" + database.password()));
    all.addAll(List.of(settings));
    return new SpringApplicationBuilder(Yearline.class)
        .web(WebApplicationType.SERVLET)
        .run(all.toArray(String[]::new));
  }

  private static long person(ConfigurableApplicationContext app) {
    return app.getBean(Accounts.class)
        .add("Sam Secret", EmailAddress.of("sam@club.example").orElseThrow(), "h", Role.MEMBER);
  }

  private static void layOpen(ConfigurableApplicationContext app, long person) {
    app.getBean(JdbcClient.class)
        .sql("update person set totp_secret = :secret, totp_since = :now where id = :id")
        .param("secret", SECRET)
        .param("now", Accounts.now())
        .param("id", person)
        .update();
  }

  private static String stored(ConfigurableApplicationContext app, long person) {
    return app.getBean(JdbcClient.class)
        .sql("select totp_secret from person where id = :id")
        .param("id", person)
        .query(String.class)
        .single();
  }

  private static boolean takes(ConfigurableApplicationContext app, long person) {
    Account account = app.getBean(Accounts.class).find(person).orElseThrow();
    return app.getBean(SecondFactors.class)
        .accepts(account, OneTimeCodes.code(SECRET, Instant.now()));
  }

  /** Ten codes, of which the database knows SHA-256 alone. */
  private static boolean recoveryCodesLieHashed(ConfigurableApplicationContext app, long person) {
    List<String> codes = app.getBean(SecondFactors.class).newRecoveryCodes(person);
    List<String> stored =
        app.getBean(JdbcClient.class)
            .sql("select hash from recovery_code where person_id = :id")
            .param("id", person)
            .query(String.class)
            .list();
    assertThat(stored)
        .containsExactlyInAnyOrderElementsOf(
            codes.stream().map(code -> Secret.hash(code.replace("-", ""))).toList());
    return stored.stream().allMatch(hash -> hash.matches("[0-9a-f]{64}"));
  }
}
