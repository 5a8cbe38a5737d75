package club.yearline.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is refused at the door. */
class BadZipsTest {

  @TempDir Path folder;

  private Path zip() {
    return folder.resolve("package.zip");
  }

  private static String onlyCode(Path path) throws IOException {
    PackageReading reading = PackageReader.read(path);
    assertThat(reading.problems()).hasSize(1);
    assertThat(Texts.of(reading.problems().get(0))).isNotBlank();
    return reading.problems().get(0).code();
  }

  @Test
  void aCleanZipIsRead() throws IOException {
    assertThat(PackageReader.read(Packages.clean().zip(zip())).problems()).isEmpty();
  }

  @Test
  void whatIsNoZipIsRefused() throws IOException {
    Files.writeString(zip(), "PK but not really");
    assertThat(onlyCode(zip())).isEqualTo("not-a-zip");
  }

  @Test
  void whatIsNotThereIsRefused() throws IOException {
    assertThat(onlyCode(zip())).isEqualTo("no-such-package");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../families.csv",
        "pictures/../../x.svg",
        "/etc/x.csv",
        "C:/x.csv",
        "..\\x.csv",
        "a/.."
      })
  void aNameThatClimbsOutIsRefused(String name) throws IOException {
    assertThat(onlyCode(Packages.clean().with(name, "").zip(zip()))).isEqualTo("climbing-name");
  }

  @Test
  void aLinkThatLeadsOutOfAFolderIsRefused() throws IOException {
    Path secret = Files.writeString(folder.resolve("secret.csv"), "key\n");
    Path inside = Packages.clean().folder(folder.resolve("inside"));
    Files.createSymbolicLink(inside.resolve("retrofits.csv"), secret);
    assertThat(onlyCode(inside)).isEqualTo("climbing-name");
  }

  @Test
  void aBombIsRefusedWhateverSizeItClaims() throws IOException {
    byte[] zeros = new byte[21 * 1024 * 1024];
    Packages bomb = Packages.clean();
    for (int i = 0; i < 10; i++) {
      bomb.with("pictures/p" + i + ".svg", zeros);
    }
    assertThat(Files.size(bomb.zip(zip()))).isLessThan(1024 * 1024);
    assertThat(PackageReader.read(zip()).problems())
        .extracting(PackageProblem::code)
        .contains("too-large");
  }

  @Test
  void theBudgetIsForAllFilesTogether() throws IOException {
    try (PackageFiles files = PackageFiles.at(Packages.clean().zip(zip()))) {
      assertThat(new PackageReader(files, PackageReader.MOST_ROWS, 500).read().problems())
          .extracting(PackageProblem::code)
          .containsExactly("too-large");
    }
  }

  @Test
  void aZipOfTheFolderInsteadOfItsContentsIsExplained() throws IOException {
    Packages nested = Packages.clean().without("datapackage.json");
    nested.with("demo/datapackage.json", "{}");
    assertThat(onlyCode(nested.zip(zip()))).isEqualTo("no-descriptor");
  }

  @Test
  void aZipWhoseContentIsBrokenIsExplained() throws IOException {
    byte[] bytes = Files.readAllBytes(Packages.clean().zip(zip()));
    // The first bytes after the first entry's header are compressed data.
    for (int i = 48; i < 60; i++) {
      bytes[i] ^= 0x55;
    }
    Files.write(zip(), bytes);
    assertThat(PackageReader.read(zip()).problems())
        .isNotEmpty()
        .allSatisfy(problem -> assertThat(Texts.of(problem)).isNotBlank());
  }
}
