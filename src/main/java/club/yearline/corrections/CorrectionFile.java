package club.yearline.corrections;

import club.yearline.catalog.PictureFile;
import jakarta.persistence.Basic;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A file that came with a correction. */
@Entity
class CorrectionFile {

  /** What it is there for. */
  enum Purpose {
    /** Shown to those who read the correction; never published. */
    EVIDENCE,
    /** Published with the correction, under its name. */
    PICTURE;

    /** The word used in the database. */
    String code() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "correction_file_seq")
  @SequenceGenerator(name = "correction_file_seq", sequenceName = "correction_file_seq")
  private @Nullable Long id;

  private long correctionId;
  private Purpose purpose;
  private String name;
  private String mediaType;
  private String sha256;
  private int size;

  @Basic(fetch = FetchType.LAZY)
  private byte[] bytes;

  private long addedBy;
  private Instant addedAt;

  protected CorrectionFile() {}

  static CorrectionFile of(long correction, Purpose purpose, PictureFile file, long by) {
    CorrectionFile stored = new CorrectionFile();
    stored.correctionId = correction;
    stored.purpose = purpose;
    stored.name = file.name();
    stored.mediaType = file.picture().mediaType();
    stored.sha256 = file.picture().sha256();
    stored.size = file.bytes().length;
    stored.bytes = file.bytes();
    stored.addedBy = by;
    stored.addedAt = Instant.now().truncatedTo(ChronoUnit.MICROS);
    return stored;
  }

  long id() {
    return Objects.requireNonNull(id);
  }

  long correction() {
    return correctionId;
  }

  Purpose purpose() {
    return purpose;
  }

  String name() {
    return name;
  }

  String mediaType() {
    return mediaType;
  }

  String sha256() {
    return sha256;
  }

  /** Whether it is made of dots. */
  boolean isPhotograph() {
    return isPicture() && !mediaType.equals("image/svg+xml");
  }

  /** Whether it can be shown; drawings come only with packages, which are looked through. */
  boolean isPicture() {
    return mediaType.startsWith("image/");
  }

  int size() {
    return size;
  }

  byte[] bytes() {
    return bytes;
  }

  PictureFile toPicture() {
    return new PictureFile(name, mediaType, bytes);
  }
}
