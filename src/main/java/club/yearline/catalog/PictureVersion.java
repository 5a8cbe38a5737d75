package club.yearline.catalog;

import club.yearline.effectivity.Picture;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import org.jspecify.annotations.Nullable;

/** Which content a picture's name stood for over a span of revisions. */
@Entity
class PictureVersion {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "picture_version_seq")
  @SequenceGenerator(
      name = "picture_version_seq",
      sequenceName = "version_seq",
      allocationSize = 500)
  private @Nullable Long id;

  private String name;
  private int sinceRevision;
  private int untilRevision = VersionSpan.OPEN;
  private String sha256;
  private String mediaType;

  protected PictureVersion() {}

  static PictureVersion of(Picture picture, int since) {
    PictureVersion version = new PictureVersion();
    version.name = picture.name();
    version.sinceRevision = since;
    version.sha256 = picture.sha256();
    version.mediaType = picture.mediaType();
    return version;
  }

  Picture toPicture() {
    return new Picture(name, mediaType, sha256);
  }

  String mediaType() {
    return mediaType;
  }
}
