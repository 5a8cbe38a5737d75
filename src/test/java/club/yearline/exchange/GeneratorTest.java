package club.yearline.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GeneratorTest {

  @TempDir Path folder;

  private int generate(String name, int families, long seed) throws IOException {
    PrintWriter ignored = new PrintWriter(new StringWriter());
    return new Generator(seed, families, new Console(ignored, ignored))
        .writeTo(folder.resolve(name));
  }

  @Test
  void aGeneratedCatalogueIsCleanAndCanonical() throws IOException {
    generate("first", 3, 11);
    PackageReading reading = PackageReader.read(folder.resolve("first"));
    assertThat(reading.problems()).noneMatch(PackageProblem::isError);
    Packages.write(reading.records(), folder.resolve("again"));
    assertThat(Packages.contents(folder.resolve("again")))
        .isEqualTo(Packages.contents(folder.resolve("first")));
  }

  @Test
  void equalSeedsMakeEqualBytesAndOthersDoNot() throws IOException {
    generate("a.zip", 2, 5);
    generate("b.zip", 2, 5);
    generate("c.zip", 2, 6);
    assertThat(Files.mismatch(folder.resolve("a.zip"), folder.resolve("b.zip"))).isEqualTo(-1);
    assertThat(Files.mismatch(folder.resolve("a.zip"), folder.resolve("c.zip"))).isNotEqualTo(-1);
  }

  @Test
  void aThousandFamiliesAreAMillionRowsWhateverTheSeed() throws IOException {
    for (long seed : new long[] {1, 2}) {
      int two = generate("two-" + seed, 2, seed);
      int perFamily = generate("three-" + seed, 3, seed) - two;
      assertThat(two + 998 * perFamily).isEqualTo(PackageReader.MOST_ROWS);
    }
  }

  @Test
  void theRowsToldAreTheRowsRead() throws IOException {
    int rows = generate("two.zip", 2, 1);
    assertThat(PackageReader.read(folder.resolve("two.zip")).rows()).isEqualTo(rows);
  }
}
