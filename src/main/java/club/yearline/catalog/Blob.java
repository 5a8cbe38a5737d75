package club.yearline.catalog;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;

/** Bytes, stored once however often they are used. */
@Entity
class Blob {

  @Id private String sha256;
  private byte[] bytes;

  protected Blob() {}

  static Blob of(String sha256, byte[] bytes) {
    Blob blob = new Blob();
    blob.sha256 = sha256;
    blob.bytes = bytes;
    return blob;
  }

  byte[] bytes() {
    return bytes;
  }
}
