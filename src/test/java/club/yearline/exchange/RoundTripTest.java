package club.yearline.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.Records;
import club.yearline.testing.Catalogues;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.LongStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Writing and reading generated catalogues; a failing seed is in the test's name. */
class RoundTripTest {

  @TempDir Path folder;

  static LongStream seeds() {
    return LongStream.range(0, 120);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void whatWasWrittenReadsWithoutErrors(long seed) throws IOException {
    Records records = Catalogues.random(seed);
    PackageReading reading = PackageReader.read(Packages.write(records, folder.resolve("first")));
    assertThat(reading.problems()).noneMatch(PackageProblem::isError);
    assertThat(reading.records().entries())
        .containsExactlyInAnyOrderElementsOf(new Sorted(records).entries());
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void writingReadingAndWritingAgainChangesNoByte(long seed) throws IOException {
    Path first = Packages.write(Catalogues.random(seed), folder.resolve("first"));
    Records read = PackageReader.read(first).records();
    Path second = Packages.write(read, folder.resolve("second"));
    assertThat(Packages.contents(second)).isEqualTo(Packages.contents(first));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void zipsOfEqualCataloguesAreEqual(long seed) throws IOException {
    Path first = Packages.write(Catalogues.random(seed), folder.resolve("first.zip"));
    Records read = PackageReader.read(first).records();
    Path second = Packages.write(read, folder.resolve("second.zip"));
    assertThat(Files.readAllBytes(second)).isEqualTo(Files.readAllBytes(first));
  }
}
