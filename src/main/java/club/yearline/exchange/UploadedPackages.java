package club.yearline.exchange;

import club.yearline.catalog.EntryRef;
import club.yearline.catalog.PictureFile;
import club.yearline.catalog.Snapshot;
import club.yearline.catalog.Snapshots;
import club.yearline.corrections.PackageProposal;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Picture;
import club.yearline.uploads.NotTaken;
import club.yearline.uploads.Turns;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.web.multipart.MultipartFile;

/** Data packages that people upload, one at a time: a large one fills much of the memory. */
@Component
class UploadedPackages {

  /** Less than the command line takes: here it is held beside all that others read. */
  private static final int MOST_ROWS = 150_000;

  private static final long MOST_BYTES = 100L * 1024 * 1024;

  private static final int MAY_WAIT = 2;
  private static final int PATIENCE = 30;

  private final Snapshots snapshots;
  private final Turns turns = new Turns(1, MAY_WAIT, PATIENCE);

  UploadedPackages(Snapshots snapshots) {
    this.snapshots = snapshots;
  }

  /** What is done with a package while it is in memory. */
  interface Use<T> {
    T of(PackageReading reading);
  }

  /**
   * Reads a package and has it used.
   *
   * @param name what it is called in reports
   * @throws NotTaken if too many others wait
   */
  <T> T read(MultipartFile sent, String name, Use<T> use) throws NotTaken, IOException {
    return turns.take(
        () -> {
          Path zip = Files.createTempFile("package", ".zip");
          try {
            sent.transferTo(zip);
            return use.of(read(zip, name));
          } finally {
            Files.deleteIfExists(zip);
          }
        });
  }

  private static PackageReading read(Path zip, String name) throws IOException {
    try (PackageFiles files = ZipFiles.in(zip, name)) {
      return new PackageReader(files, MOST_ROWS, MOST_BYTES).read();
    } catch (RefusedPackage e) {
      return PackageReading.refused(e.problem());
    }
  }

  /** What a package without errors has otherwise than it is published now. */
  PackageProposal proposal(PackageReading reading) {
    Snapshot newest = snapshots.head();
    Map<EntryRef, Entry> published =
        newest.catalogue().records().entries().stream()
            .collect(Collectors.toMap(EntryRef::of, Function.identity()));
    List<Entry> entries =
        reading.records().entries().stream()
            .filter(entry -> !entry.equals(published.get(EntryRef.of(entry))))
            .toList();
    Set<Picture> shown = new HashSet<>(newest.catalogue().records().pictures());
    List<PictureFile> pictures =
        reading.pictures().stream().filter(file -> !shown.contains(file.picture())).toList();
    return new PackageProposal(entries, pictures, newest.number());
  }
}
