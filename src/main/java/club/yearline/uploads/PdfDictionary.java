package club.yearline.uploads;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The names that a dictionary of a PDF document holds itself, not in what it nests. */
final class PdfDictionary {

  /** The longest that is read; those that are looked at hold a dozen short entries. */
  private static final int LONGEST = 64 * 1024;

  private static final Pattern NAME = Pattern.compile("/([^\\s()<>\\[\\]{}/%]{0,127})");
  private static final Pattern ESCAPED = Pattern.compile("#([0-9A-Fa-f]{2})");
  private static final Pattern NUMBER = Pattern.compile("\\s+([0-9]{1,10})(?=[\\s/>])");

  private final Map<String, String> numbers = new HashMap<>();
  private final String text;
  private int at;
  private int depth;

  private PdfDictionary(String text) {
    this.text = text;
  }

  /**
   * Reads the dictionary that begins at a place.
   *
   * @throws NotTaken if none does, or it does not end
   */
  static PdfDictionary at(String document, int from) throws NotTaken {
    PdfDictionary dictionary =
        new PdfDictionary(document.substring(from, Math.min(document.length(), from + LONGEST)));
    if (!dictionary.text.startsWith("<<")) {
      throw PdfCheck.broken();
    }
    dictionary.read();
    return dictionary;
  }

  boolean has(String name) {
    return numbers.containsKey(name);
  }

  /** The whole number that follows a name; empty where none does. */
  String number(String name) {
    return numbers.getOrDefault(name, "");
  }

  private void read() throws NotTaken {
    do {
      if (at >= text.length()) {
        throw PdfCheck.broken();
      }
      if (text.startsWith("<<", at)) {
        depth++;
        at += 2;
      } else if (text.startsWith(">>", at)) {
        depth--;
        at += 2;
      } else {
        readOne();
      }
    } while (depth > 0);
  }

  private void readOne() throws NotTaken {
    switch (text.charAt(at)) {
      case '(' -> skipString();
      case '<' -> skipTo('>');
      case '%' -> skipLine();
      case '/' -> readName();
      default -> at++;
    }
  }

  private void readName() {
    Matcher name = NAME.matcher(text).region(at, text.length());
    if (!name.lookingAt()) {
      at++;
      return;
    }
    at = name.end();
    if (depth == 1) {
      Matcher number = NUMBER.matcher(text).region(at, text.length());
      numbers.putIfAbsent(plain(name.group(1)), number.lookingAt() ? number.group(1) : "");
    }
  }

  /** A name may spell any of its letters as a number. */
  private static String plain(String name) {
    return ESCAPED
        .matcher(name)
        .replaceAll(
            m -> Matcher.quoteReplacement(String.valueOf((char) Integer.parseInt(m.group(1), 16))));
  }

  private void skipString() throws NotTaken {
    int open = 0;
    do {
      if (at >= text.length()) {
        throw PdfCheck.broken();
      }
      char c = text.charAt(at++);
      if (c == '\\') {
        at++;
      } else if (c == '(') {
        open++;
      } else if (c == ')') {
        open--;
      }
    } while (open > 0);
  }

  private void skipTo(char end) throws NotTaken {
    at = text.indexOf(end, at) + 1;
    if (at == 0) {
      throw PdfCheck.broken();
    }
  }

  private void skipLine() {
    while (at < text.length() && text.charAt(at) != '\n' && text.charAt(at) != '\r') {
      at++;
    }
  }
}
