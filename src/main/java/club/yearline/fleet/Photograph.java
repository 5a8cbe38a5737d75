package club.yearline.fleet;

import club.yearline.uploads.Evidence;
import jakarta.persistence.Basic;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HexFormat;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A photograph of something that was seen, made anew of what was sent. */
@Entity
class Photograph {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "photograph_seq")
  @SequenceGenerator(name = "photograph_seq", sequenceName = "photograph_seq")
  private @Nullable Long id;

  private long observationId;
  private String name;
  private String mediaType;
  private String sha256;
  private int size;

  @Basic(fetch = FetchType.LAZY)
  private byte[] bytes;

  private Instant addedAt;

  protected Photograph() {}

  static Photograph of(long observation, Evidence file) {
    Photograph photograph = new Photograph();
    photograph.observationId = observation;
    photograph.name = file.name();
    photograph.mediaType = file.mediaType();
    photograph.sha256 = digest(file.bytes());
    photograph.size = file.bytes().length;
    photograph.bytes = file.bytes();
    photograph.addedAt = Instant.now().truncatedTo(ChronoUnit.MICROS);
    return photograph;
  }

  static String digest(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java platform has SHA-256", e);
    }
  }

  long id() {
    return Objects.requireNonNull(id);
  }

  long observation() {
    return observationId;
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

  byte[] bytes() {
    return bytes;
  }
}
