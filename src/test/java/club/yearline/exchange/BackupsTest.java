package club.yearline.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.Yearline;
import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.catalog.Edition;
import club.yearline.catalog.Publication;
import club.yearline.catalog.Snapshots;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Family;
import club.yearline.testing.Database;
import club.yearline.testing.SignedIn;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Backups, restoring them and moving to another database, by the commands that people type. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BackupsTest {

  enum Kind {
    EMBEDDED,
    POSTGRES;

    Database fresh() {
      return this == EMBEDDED ? Database.h2() : Database.postgres();
    }
  }

  @TempDir static Path folder;

  private final Map<Kind, Database> filled = new TreeMap<>();
  private StringWriter said = new StringWriter();
  private int files;

  @BeforeAll
  void fillOneOfEachKind() throws IOException {
    for (Kind kind : Kind.values()) {
      Database database = kind.fresh();
      assertThat(run(database, "import", "seed-data/demo")).isZero();
      application(database).run(BackupsTest::work);
      filled.put(kind, database);
    }
  }

  /** Leaves something in the tables that the catalogue does not fill. */
  private static int work(ApplicationContext context) {
    Actor ann = SignedIn.person(context, "Ann “Ås” Other\n2nd line", Role.KEEPER);
    JdbcClient jdbc = context.getBean(JdbcClient.class);
    jdbc.sql(
            """
            insert into correction (id, lock_version, author_id, origin, title, state, begun_at,
              changed_at, form_token) values (nextval('correction_seq'), 3, ?, 'typed', ?, 'draft',
              timestamp with time zone '2026-02-28 23:59:59.123456+02:00',
              timestamp with time zone '2026-03-01 00:00:00+00:00', 'token')""")
        .params(ann.id(), "Tab\t, quote \", back\\slash, \u2028 and 🛩")
        .update();
    jdbc.sql(
            """
            insert into correction_file (id, correction_id, purpose, name, media_type, sha256, size,
              bytes, added_by, added_at)
            select nextval('correction_file_seq'), id, 'evidence', 'a.png', 'image/png', '00', 4, ?,
              author_id, begun_at from correction""")
        .param(new byte[] {0, -1, 10, 13})
        .update();
    return Console.DONE;
  }

  private static Application application(Database database) {
    return new Application(
        Yearline.class,
        "--spring.datasource.url=" + database.url(),
        "--spring.datasource.username=" + database.user(),
        "--spring.datasource.password=" + database.password());
  }

  private int run(Database database, Object... arguments) {
    said = new StringWriter();
    PrintWriter writer = new PrintWriter(said, true);
    String[] texts = Stream.of(arguments).map(Object::toString).toArray(String[]::new);
    return Commands.run(application(database), writer, writer, texts);
  }

  private Path fresh() {
    return folder.resolve("backup-" + files++ + ".zip");
  }

  private Path backup(Database database) {
    Path path = fresh();
    assertThat(run(database, "backup", path)).as(said.toString()).isZero();
    return path;
  }

  /** What a backup says of every table: rows, a digest, the next numbers. */
  private static String contents(Path backup) throws IOException {
    try (ZipFile zip = new ZipFile(backup.toFile())) {
      byte[] bytes = zip.getInputStream(zip.getEntry("backup.json")).readAllBytes();
      return new String(bytes, StandardCharsets.UTF_8).replaceFirst("\"made\" : \"[^\"]*\"", "");
    }
  }

  private static void sameContents(Path one, Path other) throws IOException {
    assertThat(contents(other)).isEqualTo(contents(one)).contains("\"correction\"");
  }

  @ParameterizedTest
  @CsvSource({"EMBEDDED, EMBEDDED", "EMBEDDED, POSTGRES", "POSTGRES, EMBEDDED"})
  void whatWasRestoredIsTheSameInEveryTable(Kind from, Kind to) throws IOException {
    Path original = backup(filled.get(from));
    Database restored = to.fresh();
    assertThat(run(restored, "restore", original)).as(said.toString()).isZero();
    assertThat(said.toString()).contains("every table was compared");
    sameContents(original, backup(restored));
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void workGoesOnWhereItWasRestored(Kind kind) throws IOException {
    Database restored = kind.fresh();
    assertThat(run(restored, "restore", backup(filled.get(Kind.EMBEDDED)))).isZero();
    application(restored)
        .run(
            context -> {
              Actor ann = SignedIn.person(context, "Ann “Ås” Other\n2nd line", Role.KEEPER);
              assertThat(ann.id()).isEqualTo(1);
              assertThat(SignedIn.person(context, "Bo New", Role.MEMBER).id()).isGreaterThan(1);
              assertThat(rename(context, "Renamed")).isEqualTo(2);
              Snapshots snapshots = context.getBean(Snapshots.class);
              assertThat(snapshots.at(1).catalogue().family("turnstone").orElseThrow().summary())
                  .isNotEqualTo("Renamed");
              return Console.DONE;
            });
  }

  private static int rename(ApplicationContext context, String summary) {
    Catalogue catalogue = context.getBean(Snapshots.class).head().catalogue();
    Family known = catalogue.family("turnstone").orElseThrow();
    Family renamed =
        new Family(
            known.key(),
            known.maker(),
            known.name(),
            known.typeCertificate(),
            known.yearMeans(),
            known.fuelDensity(),
            summary,
            known.citations());
    return context
        .getBean(Publication.class)
        .publish(Edition.of("Renamed", null, List.of(renamed)))
        .number();
  }

  @ParameterizedTest
  @CsvSource({"EMBEDDED, POSTGRES", "POSTGRES, EMBEDDED"})
  void everythingMovesToTheOtherDatabaseAndBothAreTheSame(Kind from, Kind to) throws IOException {
    Database other = to.fresh();
    Path secret = Files.writeString(fresh(), other.password() + "\n");
    int code =
        run(
            filled.get(from),
            "transfer",
            "--to",
            other.url(),
            "--user",
            other.user(),
            "--password-file",
            secret);
    assertThat(code).as(said.toString()).isZero();
    sameContents(backup(filled.get(from)), backup(other));
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void aBackupIsOfOneMomentWhilePeopleWork(Kind kind) throws Exception {
    Database database = kind.fresh();
    assertThat(run(database, "restore", backup(filled.get(Kind.EMBEDDED)))).isZero();
    CountDownLatch begun = new CountDownLatch(3);
    ExecutorService people = Executors.newSingleThreadExecutor();
    try {
      Future<Integer> work =
          people.submit(
              () ->
                  application(database)
                      .run(
                          context -> {
                            int published = 0;
                            for (int i = 0; i < 40; i++) {
                              published = rename(context, "Renamed " + i);
                              begun.countDown();
                            }
                            return published;
                          }));
      begun.await();
      Path made = backup(database);
      int published = work.get();
      Database restored = Kind.EMBEDDED.fresh();
      assertThat(run(restored, "restore", made)).as(said.toString()).isZero();
      application(restored)
          .run(
              context -> {
                JdbcClient jdbc = context.getBean(JdbcClient.class);
                int head = number(jdbc, "select number from head");
                assertThat(head).isBetween(2, published);
                assertThat(number(jdbc, "select max(number) from revision")).isEqualTo(head);
                assertThat(number(jdbc, "select max(since_revision) from family_version"))
                    .isEqualTo(head);
                return Console.DONE;
              });
    } finally {
      people.shutdown();
    }
  }

  private static int number(JdbcClient jdbc, String query) {
    return jdbc.sql(query).query(Integer.class).single();
  }

  @Test
  void aFilledDatabaseIsNotRestoredInto() throws IOException {
    Path made = backup(filled.get(Kind.EMBEDDED));
    assertThat(run(filled.get(Kind.EMBEDDED), "restore", made)).isEqualTo(Console.REFUSED);
    assertThat(said.toString()).contains("The database is in use. Nothing was changed.");
    sameContents(made, backup(filled.get(Kind.EMBEDDED)));
  }

  @Test
  void nothingIsWrittenOver() throws IOException {
    Path taken = Files.writeString(fresh(), "mine");
    assertThat(run(filled.get(Kind.EMBEDDED), "backup", taken)).isEqualTo(Console.REFUSED);
    assertThat(taken).hasContent("mine");
    assertThat(said.toString()).contains("is there already");
  }

  /** A change to a zip's entry; the archive itself stays sound. */
  private Path tampered(String name, String from, String to) throws IOException {
    Path path = fresh();
    Files.copy(backup(filled.get(Kind.EMBEDDED)), path);
    try (FileSystem zip = FileSystems.newFileSystem(URI.create("jar:" + path.toUri()), Map.of())) {
      Path entry = zip.getPath(name);
      String text = Files.readString(entry);
      assertThat(text).contains(from);
      Files.writeString(entry, text.replaceFirst(java.util.regex.Pattern.quote(from), to));
    }
    return path;
  }

  @ParameterizedTest
  @CsvSource({
    "tables/variant_version.jsonl, LA-2B, LA-2X, does not hold what was written",
    "tables/club.jsonl, ']', '', does not hold what was written",
    "backup.json, '\"format\" : 1', '\"format\" : 2', The backup is of form 2",
    "backup.json, '{', '', does not hold what was written",
    "backup.json, '\"schema\" : \"', '\"schema\" : \"99', made by a later version",
  })
  void whatIsDamagedOrOfALaterVersionIsRefusedAndNothingStored(
      String entry, String from, String to, String said) throws IOException {
    Path tampered = tampered(entry, from, to);
    Database database = Kind.EMBEDDED.fresh();
    assertThat(run(database, "restore", tampered)).isEqualTo(Console.REFUSED);
    assertThat(this.said.toString()).contains(said);
    assertThat(run(database, "restore", backup(filled.get(Kind.EMBEDDED)))).isZero();
  }

  @Test
  void aFileCutShortIsRefused() throws IOException {
    byte[] whole = Files.readAllBytes(backup(filled.get(Kind.EMBEDDED)));
    Path cut = Files.write(fresh(), java.util.Arrays.copyOf(whole, whole.length / 2));
    assertThat(run(Kind.EMBEDDED.fresh(), "restore", cut)).isEqualTo(Console.REFUSED);
    assertThat(said.toString()).contains("is not a backup of Yearline");
  }

  @Test
  void aFlippedBitIsFound() throws IOException {
    Path path = fresh();
    Files.copy(backup(filled.get(Kind.EMBEDDED)), path);
    byte[] bytes = Files.readAllBytes(path);
    int middle;
    try (ZipFile zip = new ZipFile(path.toFile())) {
      ZipEntry largest =
          zip.stream().max(java.util.Comparator.comparing(ZipEntry::getCompressedSize)).get();
      middle = new String(bytes, StandardCharsets.ISO_8859_1).indexOf(largest.getName());
      middle += (int) largest.getCompressedSize() / 2;
    }
    bytes[middle] ^= 1;
    Files.write(path, bytes);
    assertThat(run(Kind.EMBEDDED.fresh(), "restore", path)).isEqualTo(Console.REFUSED);
    assertThat(said.toString()).contains("does not hold what was written");
  }

  @Test
  void whoIsSignedInIsNotInABackup() throws IOException {
    assertThat(contents(backup(filled.get(Kind.EMBEDDED)))).doesNotContain("session");
  }
}
