package club.yearline.exchange;

import club.yearline.catalog.Pictures;
import club.yearline.catalog.Snapshot;
import club.yearline.catalog.Snapshots;
import club.yearline.catalog.UnknownRevision;
import club.yearline.effectivity.Picture;
import java.io.IOException;
import java.util.NoSuchElementException;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Writes published states of the catalogue as packages. */
@Component
class Exporting {

  private final Snapshots snapshots;
  private final Pictures pictures;

  Exporting(Snapshots snapshots, Pictures pictures) {
    this.snapshots = snapshots;
    this.pictures = pictures;
  }

  /**
   * The state at a revision, or the newest.
   *
   * @throws UnknownRevision if there is no such revision
   */
  Snapshot at(@Nullable Integer revision) {
    return revision == null ? snapshots.head() : snapshots.at(revision);
  }

  /** Writes a state; the target is not closed. */
  void write(Snapshot snapshot, PackageTarget target) throws IOException {
    PackageWriter.write(snapshot.catalogue().records(), this::bytes, target);
  }

  private byte[] bytes(Picture picture) {
    return pictures
        .find(picture.sha256())
        .orElseThrow(() -> new NoSuchElementException("No content for picture " + picture.name()))
        .bytes();
  }
}
