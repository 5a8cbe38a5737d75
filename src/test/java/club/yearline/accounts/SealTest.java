package club.yearline.accounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SealTest {

  private static final String ONE = SealingKey.fresh();
  private static final String TWO = SealingKey.fresh();
  private static final String SECRET = OneTimeCodes.newSecret();
  private static final String ELSEWHERE = "jdbc:postgresql://database/yearline";

  @TempDir private Path folder;

  @Test
  void whatIsSealedIsReadAgainAndDoesNotShow() {
    Seal seal = seal(ONE);
    String stored = seal.close(7, SECRET);
    assertThat(stored).doesNotContain(SECRET).hasSizeLessThanOrEqualTo(200);
    assertThat(seal.open(7, stored)).contains(SECRET);
    assertThat(seal.close(7, SECRET)).as("each time anew").isNotEqualTo(stored);
    assertThat(seal(ONE).open(7, stored)).as("after a restart").contains(SECRET);
    assertThat(seal.close(Long.MAX_VALUE, SECRET)).hasSizeLessThanOrEqualTo(200);
  }

  @Test
  void whatIsSealedForOnePersonDoesNotOpenForAnother() {
    assertThat(seal(ONE).open(71, seal(ONE).close(7, SECRET))).isEmpty();
  }

  @Test
  void whatWasChangedDoesNotOpen() {
    String stored = seal(ONE).close(7, SECRET);
    char last = stored.charAt(stored.length() - 3);
    String changed =
        stored.substring(0, stored.length() - 3)
            + (last == 'A' ? 'B' : 'A')
            + stored.substring(stored.length() - 2);
    assertThat(seal(ONE).open(7, changed)).isEmpty();
    assertThat(seal(ONE).open(7, stored.substring(0, 30))).isEmpty();
    assertThat(seal(ONE).open(7, stored.substring(0, 16) + "!?")).isEmpty();
  }

  @Test
  void aFormerKeyOpensAndThePresentOneSeals() {
    String stored = seal(ONE).close(7, SECRET);
    Seal rotated = new Seal(new SealingKeys(TWO, List.of(ONE), ELSEWHERE));
    assertThat(rotated.isToday(stored)).isFalse();
    assertThat(rotated.open(7, stored)).contains(SECRET);
    String anew = rotated.close(7, SECRET);
    assertThat(rotated.isToday(anew)).isTrue();
    assertThat(seal(TWO).open(7, anew)).contains(SECRET);
    assertThat(seal(TWO).open(7, stored)).as("without the former key").isEmpty();
  }

  @Test
  void whatLiesOpenIsReadAndIsNotAsItShouldBe() {
    assertThat(seal(ONE).open(7, SECRET)).contains(SECRET);
    assertThat(seal(ONE).isToday(SECRET)).isFalse();
  }

  @Test
  void withoutAKeyNothingIsSealedAndThatIsKnown() {
    SealingKeys none = new SealingKeys("", List.of(), ELSEWHERE);
    assertThat(none.areMissing()).isTrue();
    assertThat(new Seal(none).close(7, SECRET)).isEqualTo(SECRET);
    assertThat(new Seal(none).isToday(SECRET)).isTrue();
    assertThat(new SealingKeys(ONE, List.of(), ELSEWHERE).areMissing()).isFalse();
    assertThat(new SealingKeys("", List.of(), "jdbc:h2:mem:x").areMissing()).isFalse();
  }

  @Test
  void besideAnEmbeddedDatabaseAKeyIsMadeOnceForItsOwnerAlone() throws IOException {
    String database = "jdbc:h2:file:" + folder.resolve("data/yearline") + ";MODE=PostgreSQL";
    Path file = folder.resolve("data/yearline.key");
    SealingKeys keys = new SealingKeys("", List.of(), database);
    assertThat(keys.areMissing()).isFalse();
    assertThat(Files.exists(file)).as("not before it is needed").isFalse();
    String stored = new Seal(keys).close(7, SECRET);
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-------");
    Seal later = new Seal(new SealingKeys("", List.of(), database));
    assertThat(later.open(7, stored)).contains(SECRET);
    assertThat(later.isToday(stored)).isTrue();
    Seal moved = new Seal(new SealingKeys(ONE, List.of(), database));
    assertThat(moved.open(7, stored)).as("a key is set later on").contains(SECRET);
    assertThat(moved.isToday(stored)).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "jdbc:h2:file:./data/yearline;MODE=PostgreSQL, ./data/yearline.key",
    "jdbc:h2:./data/yearline, ./data/yearline.key",
    "jdbc:h2:/var/lib/yearline/db;A=B, /var/lib/yearline/db.key"
  })
  void theKeyLiesBesideTheDatabase(String database, Path file) {
    assertThat(KeyFile.beside(database)).contains(new KeyFile(file));
  }

  @Test
  void aTildeIsHome() {
    assertThat(KeyFile.beside("jdbc:h2:~/club").orElseThrow().path())
        .isEqualTo(Path.of(System.getProperty("user.home"), "club.key"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "jdbc:h2:mem:club",
        "jdbc:h2:tcp://server/~/club",
        "jdbc:h2:ssl:server/club",
        "jdbc:h2:zip:club.zip!/club",
        "jdbc:postgresql://database/yearline",
        ""
      })
  void whereTheDatabaseIsNoFileOfOursNoneIsMade(String database) {
    assertThat(KeyFile.beside(database)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"short", "bm90IHRoaXJ0eS10d28gYnl0ZXM=", "***", "correct horse battery"})
  void whatIsNoKeyStopsTheStartAndIsNotRepeated(String text) {
    assertThatThrownBy(() -> seal(text))
        .hasMessageContaining("32 bytes in Base64")
        .hasMessageNotContaining(text);
  }

  private static Seal seal(String key) {
    return new Seal(new SealingKeys(key, List.of(), ELSEWHERE));
  }
}
