package club.yearline.uploads;

/** Judges files by content and makes of them what is kept as evidence. */
final class EvidenceReader {

  /** The most bytes of a file. */
  static final int MOST_BYTES = 10 * 1024 * 1024;

  private static final String PDF = "application/pdf";

  private EvidenceReader() {}

  /**
   * Makes evidence of a file.
   *
   * @param name as the browser sent it, which proves nothing
   * @throws NotTaken if the file is of no kind that is taken, broken, locked or too large
   */
  static Evidence read(String name, byte[] bytes) throws NotTaken {
    if (bytes.length == 0) {
      throw new NotTaken("empty-file");
    }
    if (bytes.length > MOST_BYTES) {
      throw new NotTaken("file-too-large", MOST_BYTES / (1024 * 1024));
    }
    if (PdfCheck.looksLike(bytes)) {
      new PdfCheck(bytes).check();
      return new Evidence(FileName.clean(name, "pdf"), PDF, bytes);
    }
    Photograph made = Photograph.of(bytes, photographed(bytes), MOST_BYTES);
    String ending = made.type() == PictureType.PNG ? "png" : "jpg";
    return new Evidence(FileName.clean(name, ending), made.type().mediaType(), made.bytes());
  }

  private static PictureType photographed(byte[] bytes) throws NotTaken {
    return PictureType.byStart(bytes)
        .filter(type -> type != PictureType.SVG)
        .orElseThrow(() -> new NotTaken("not-evidence"));
  }
}
