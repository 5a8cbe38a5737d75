package club.yearline.uploads;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Follows a PDF document's own table of contents from its end, as every reader of such documents
 * does, in bounded time and without unpacking anything: what is inside is never shown here, only
 * handed out.
 */
final class PdfCheck {

  private static final Pattern START = Pattern.compile("%PDF-[12]\\.[0-9]");

  /** The last words of a document. Readers look for them near the end only. */
  private static final Pattern END = Pattern.compile("startxref\\s+([0-9]{1,10})\\s+%%EOF\\s*$");

  private static final int END_LIES_WITHIN = 1024;

  /** By this a zip is known, which programs also read from the end. */
  private static final String ZIP_END = "PK\005\006";

  private static final int ZIP_END_LIES_WITHIN = 66_000;

  /** A document saved more often than this is not opened. */
  private static final int MOST_SECTIONS = 64;

  private static final Pattern OBJECT = Pattern.compile("[0-9]{1,10}\\s+[0-9]{1,5}\\s+obj\\b");

  private final String text;
  private final Set<Integer> seen = new HashSet<>();
  private final Deque<Integer> ahead = new ArrayDeque<>();
  private boolean rooted;

  PdfCheck(byte[] bytes) {
    // One character for each byte, so that places are those of the document.
    this.text = new String(bytes, StandardCharsets.ISO_8859_1);
  }

  /** Whether this can be nothing else. */
  static boolean looksLike(byte[] bytes) {
    int length = Math.min(bytes.length, 8);
    return START.matcher(new String(bytes, 0, length, StandardCharsets.ISO_8859_1)).lookingAt();
  }

  /**
   * Checks the document.
   *
   * @throws NotTaken if it is broken, locked, or something else hangs on it
   */
  void check() throws NotTaken {
    Matcher end = END.matcher(last(END_LIES_WITHIN));
    if (!end.find() || last(ZIP_END_LIES_WITHIN).contains(ZIP_END)) {
      throw broken();
    }
    goTo(end.group(1));
    while (!ahead.isEmpty()) {
      readSection(ahead.remove());
    }
    if (!rooted) {
      throw broken();
    }
  }

  private String last(int length) {
    return text.substring(Math.max(0, text.length() - length));
  }

  private void readSection(int at) throws NotTaken {
    int from = skipBlanks(at);
    int dictionary = text.startsWith("xref", from) ? afterTable(from) : afterObject(from);
    PdfDictionary section = PdfDictionary.at(text, dictionary);
    if (section.has("Encrypt")) {
      throw new NotTaken("locked-document");
    }
    rooted |= section.has("Root");
    goTo(section.number("Prev"));
    goTo(section.number("XRefStm"));
  }

  private int afterTable(int from) throws NotTaken {
    int trailer = text.indexOf("trailer", from);
    if (trailer < 0) {
      throw broken();
    }
    return skipBlanks(trailer + "trailer".length());
  }

  private int afterObject(int from) throws NotTaken {
    Matcher object = OBJECT.matcher(text).region(from, Math.min(text.length(), from + 40));
    if (!object.lookingAt()) {
      throw broken();
    }
    return skipBlanks(object.end());
  }

  private void goTo(String place) throws NotTaken {
    if (place.isEmpty()) {
      return;
    }
    long at = Long.parseLong(place);
    if (at >= text.length() || seen.size() >= MOST_SECTIONS) {
      throw broken();
    }
    if (seen.add((int) at)) {
      ahead.add((int) at);
    }
  }

  private int skipBlanks(int from) {
    int at = from;
    while (at < text.length() && text.charAt(at) <= ' ') {
      at++;
    }
    return at;
  }

  static NotTaken broken() {
    return new NotTaken("broken-document");
  }
}
