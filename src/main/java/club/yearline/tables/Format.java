package club.yearline.tables;

import club.yearline.citation.Edtf;
import club.yearline.effectivity.Values;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** What the format's descriptions ask of a text beyond what a table schema can say. */
public enum Format {
  TEXT(text -> true),
  EDTF(text -> Edtf.read(text).isPresent()),
  URL(Format::isWebAddress),
  PICTURE(Format::isFileName),
  QUANTITY(text -> true),
  ABOVE_ZERO(text -> Values.number(text).filter(n -> n.signum() > 0).isPresent());

  private static final Pattern FILE_NAME =
      Pattern.compile("[\\p{L}\\p{N}_][\\p{L}\\p{N}_.() -]{0,119}");

  private final Predicate<String> test;

  Format(Predicate<String> test) {
    this.test = test;
  }

  /** The format of the column with this name. */
  static Format of(String column) {
    return switch (column) {
      case "issued" -> EDTF;
      case "url" -> URL;
      case "picture" -> PICTURE;
      case "value" -> QUANTITY;
      case "fuel_density_lb_per_gal" -> ABOVE_ZERO;
      default -> TEXT;
    };
  }

  boolean fits(String text) {
    return test.test(text);
  }

  /** The code of the complaint about a text that does not fit. */
  String complaint() {
    return "bad-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Whether a text may name a file under pictures/: no folder, no hidden file, no way out. */
  public static boolean isFileName(String text) {
    return FILE_NAME.matcher(text).matches();
  }

  private static boolean isWebAddress(String text) {
    try {
      URI uri = new URI(text);
      String scheme = uri.getScheme();
      return uri.getHost() != null
          && (scheme.equalsIgnoreCase("http") || scheme.equalsIgnoreCase("https"));
    } catch (URISyntaxException notAnAddress) {
      return false;
    }
  }
}
