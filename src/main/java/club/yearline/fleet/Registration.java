package club.yearline.fleet;

import club.yearline.web.Refusal;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A registration mark. Its state is known by how it begins; then it must fit that state's format. A
 * mark of which no state is known is kept as typed, in capitals.
 *
 * @param text the mark as shown
 * @param format the format of its state; empty where that is not known
 */
record Registration(String text, Optional<MarkFormat> format) {

  /** The most characters of a mark, well above any that a state gives. */
  static final int LONGEST = 20;

  private static final Pattern DASHES = Pattern.compile("[\\p{Pd}\u2212\u2043]");

  /**
   * Reads a mark.
   *
   * @throws Refusal if it does not fit the format of its state
   */
  static Registration of(String typed) {
    String text =
        DASHES
            .matcher(Normalizer.normalize(typed.strip(), Normalizer.Form.NFKC))
            .replaceAll("-")
            .toUpperCase(Locale.ROOT)
            .replaceAll("\\s+", " ");
    int dash = text.indexOf('-');
    String bare = key(text);
    if (dash > 0) {
      return MarkFormat.ALL.stream()
          .filter(f -> f.mark().equals(key(text.substring(0, dash))))
          .findFirst()
          .map(f -> fitting(f, text, bare))
          .orElseGet(() -> new Registration(text, Optional.empty()));
    }
    return withoutDash(text, bare);
  }

  /** Several states may begin alike; one whose marks have no dash claims what fits no other. */
  private static Registration withoutDash(String text, String bare) {
    List<MarkFormat> fitting = MarkFormat.ALL.stream().filter(f -> f.fits(bare)).toList();
    if (fitting.size() == 1) {
      return fitting(fitting.get(0), text, bare);
    }
    return MarkFormat.ALL.stream()
        .filter(f -> fitting.isEmpty() && !f.dash() && f.begins(bare))
        .findFirst()
        .map(f -> fitting(f, text, bare))
        .orElseGet(() -> new Registration(text, Optional.empty()));
  }

  private static Registration fitting(MarkFormat format, String text, String bare) {
    if (!format.fits(bare)) {
      throw Refusal.unprocessable("registration-format", text, format.state(), format.words())
          .at("registration", "fleet.fault.registration", format.state(), format.words());
    }
    return new Registration(format.write(bare), Optional.of(format));
  }

  /** The mark without what people leave out or put in: it is found by this. */
  static String key(String mark) {
    return mark.toUpperCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{Nd}]", "");
  }
}
