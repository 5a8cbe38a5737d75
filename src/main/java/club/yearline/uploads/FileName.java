package club.yearline.uploads;

import java.text.Normalizer;

/** Makes names of uploaded files harmless. */
final class FileName {

  /** Most characters of a name, less its ending. */
  private static final int ROOM = 80;

  private static final String NAMELESS = "file";

  private FileName() {}

  /**
   * A name without folders, without signs that other programs read as more than a name, of bounded
   * length.
   *
   * @param sent as the browser sent it
   * @param ending of the content, without a dot; whatever ending was sent is dropped
   */
  static String clean(String sent, String ending) {
    String last = sent.substring(Math.max(sent.lastIndexOf('/'), sent.lastIndexOf('\\')) + 1);
    String plain =
        Normalizer.normalize(last, Normalizer.Form.NFC)
            .replaceAll("\\p{C}", "")
            .replaceAll("\\.[A-Za-z0-9]{1,5}$", "")
            .replaceAll("[^\\p{L}\\p{M}\\p{Nd}._()+-]+", " ")
            .replaceAll("^[ .]+|[ .]+$", "");
    String cut =
        plain
            .codePoints()
            .limit(ROOM)
            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
            .toString();
    return (cut.isBlank() ? NAMELESS : cut.strip()) + "." + ending;
  }
}
