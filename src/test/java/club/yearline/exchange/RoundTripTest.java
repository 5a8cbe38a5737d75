package club.yearline.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.Records;
import club.yearline.testing.Seeds;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Writing and reading generated catalogues. */
class RoundTripTest {

  private static final int SEEDS = 60;

  @TempDir Path folder;

  /** A check that reads and writes files. */
  private interface FileLaw {
    void check(Records records, Path folder) throws IOException;
  }

  private void check(FileLaw law) {
    Seeds.check(
        SEEDS,
        (records, dice) -> {
          try {
            law.check(records, Files.createTempDirectory(folder, "seed"));
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        });
  }

  @Test
  void whatWasWrittenReadsTheSame() {
    check(
        (records, at) -> {
          PackageReading reading = PackageReader.read(Packages.write(records, at.resolve("a")));
          assertThat(reading.problems()).noneMatch(PackageProblem::isError);
          assertThat(reading.records().entries())
              .containsExactlyInAnyOrderElementsOf(new Sorted(records).entries());
          assertThat(reading.records().pictures())
              .containsExactlyInAnyOrderElementsOf(records.pictures());
        });
  }

  @Test
  void writingReadingAndWritingAgainChangesNoByte() {
    check(
        (records, at) -> {
          Path first = Packages.write(records, at.resolve("a"));
          Path second = Packages.write(PackageReader.read(first).records(), at.resolve("b"));
          assertThat(Packages.contents(second)).isEqualTo(Packages.contents(first));
        });
  }

  @Test
  void zipsOfEqualCataloguesAreEqual() {
    check(
        (records, at) -> {
          Path first = Packages.write(records, at.resolve("a.zip"));
          Path second = Packages.write(PackageReader.read(first).records(), at.resolve("b.zip"));
          assertThat(Files.readAllBytes(second)).isEqualTo(Files.readAllBytes(first));
        });
  }
}
