package club.yearline.exchange;

import club.yearline.catalog.Edition;
import club.yearline.catalog.Publication;
import club.yearline.catalog.RefusedPublication;
import java.io.IOException;
import org.springframework.stereotype.Component;

/**
 * Publishes packages, each as one revision or not at all. A package is put on top of what is there:
 * its entries and pictures replace those of the same key or name, all others stay.
 */
@Component
class Importing {

  private final Publication publication;

  Importing(Publication publication) {
    this.publication = publication;
  }

  /** Reads a package and publishes it if it is clean. */
  Imported importFrom(PackageFiles files, String note) throws IOException {
    PackageReading reading = new PackageReader(files).read();
    return reading.isRefused() ? new Imported(reading, null) : publish(files, reading, note);
  }

  /**
   * Publishes what was read without errors. It may still not go together with what is there; then
   * the answer says what is wrong, at its place in the package where it lies in the package.
   */
  Imported publish(PackageFiles files, PackageReading reading, String note) throws IOException {
    Edition edition =
        Edition.of(note, null, reading.records().entries()).withPictures(reading.pictures());
    try {
      return new Imported(reading, publication.publish(edition, reading.records()));
    } catch (RefusedPublication e) {
      Problems problems = new Problems();
      new Places(files).locate(e.findings().stream().map(Lookup::of).toList(), problems);
      return new Imported(reading.with(problems.all(files.packageName())), null);
    }
  }
}
