package club.yearline.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.Picture;
import club.yearline.tables.Schemas;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo catalogue, as part of the application. */
class SeedDataTest {

  private static final Path DEMO = Path.of("seed-data", "demo");

  @TempDir Path folder;

  @Test
  void theDemoHasNoErrors() throws IOException {
    assertThat(PackageReader.read(DEMO).problems()).noneMatch(PackageProblem::isError);
  }

  @Test
  void theDemoIsReadAlikeFromTheApplicationAndFromItsFolder() throws IOException {
    try (PackageFiles packed = ResourceFiles.in(DemoLoader.FOLDER)) {
      assertThat(new PackageReader(packed).read().records())
          .isEqualTo(PackageReader.read(DEMO).records());
    }
  }

  /** Only the descriptor differs: an export has no title and licence of its own. */
  @Test
  void theDemoIsWrittenCanonically() throws IOException {
    Path again = folder.resolve("again");
    Outputs.write(
        again,
        target -> PackageWriter.write(PackageReader.read(DEMO).records(), this::bytes, target));
    Map<String, String> written = Packages.contents(again);
    Map<String, String> demo = Packages.contents(DEMO);
    written.remove(Schemas.DESCRIPTOR);
    demo.remove(Schemas.DESCRIPTOR);
    assertThat(written).isEqualTo(demo);
  }

  private byte[] bytes(Picture picture) throws IOException {
    return Files.readAllBytes(DEMO.resolve("pictures").resolve(picture.name()));
  }
}
