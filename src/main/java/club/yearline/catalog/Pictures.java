package club.yearline.catalog;

import club.yearline.effectivity.Picture;
import jakarta.persistence.EntityManager;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** Pictures by content. */
@Repository
public class Pictures {

  private final EntityManager entityManager;
  private final PictureVersions versions;

  Pictures(EntityManager entityManager, PictureVersions versions) {
    this.entityManager = entityManager;
    this.versions = versions;
  }

  /** The picture whose content has this SHA-256, in lower-case hexadecimal digits. */
  @Transactional(readOnly = true)
  public Optional<StoredPicture> find(String sha256) {
    return versions
        .findFirstBySha256OrderBySinceRevisionDesc(sha256)
        .map(v -> new StoredPicture(v.mediaType(), bytes(sha256)));
  }

  List<Picture> at(int revision) {
    return versions.at(revision).stream().map(PictureVersion::toPicture).toList();
  }

  /** Stores the pictures of an edition that differ from those there are. */
  void publish(Edition edition, List<Picture> before, int revision) {
    List<PictureFile> changed =
        edition.pictures().stream().filter(file -> !before.contains(file.picture())).toList();
    Set<String> ended = new HashSet<>(edition.withdrawnPictures());
    changed.forEach(file -> ended.add(file.name()));
    if (!ended.isEmpty()) {
      versions.close(ended, revision);
    }
    changed.forEach(file -> store(file, revision));
  }

  private void store(PictureFile file, int revision) {
    Picture picture = file.picture();
    if (entityManager.find(Blob.class, picture.sha256()) == null) {
      Batches.persist(entityManager, List.of(Blob.of(picture.sha256(), file.bytes())));
    }
    entityManager.persist(PictureVersion.of(picture, revision));
  }

  private byte[] bytes(String sha256) {
    return entityManager.find(Blob.class, sha256).bytes();
  }
}
