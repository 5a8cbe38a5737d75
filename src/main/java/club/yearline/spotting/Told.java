package club.yearline.spotting;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Feature;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What somebody says was seen, read against a catalogue: what counts, and what cannot be counted.
 * Addresses carry it as {@code o=feature:value}, once for each. Immutable.
 *
 * @param seen what counts, in the order given, each feature once
 * @param misread what does not, in the order given
 */
public record Told(List<Seen> seen, List<Misread> misread) {

  /** How many observations are taken at once. */
  public static final int MOST = 200;

  public Told {
    seen = List.copyOf(seen);
    misread = List.copyOf(misread);
  }

  /**
   * A feature and a value as given.
   *
   * @param feature key of a feature, perhaps
   * @param value a value key or a number, perhaps
   */
  public record Pairing(String feature, String value) {}

  /** Reads texts of the form {@code feature:value}. */
  public static Told read(Catalogue catalogue, List<String> texts) {
    Reader reader = new Reader(catalogue);
    for (int i = 0; i < texts.size() && reader.takes(i); i++) {
      String text = texts.get(i).strip();
      int colon = text.indexOf(':');
      if (colon <= 0) {
        reader.misread(i, Misread.Why.FORM, text, null);
      } else {
        reader.read(i, new Pairing(text.substring(0, colon), text.substring(colon + 1)));
      }
    }
    return reader.told();
  }

  /** Reads features with their values. */
  public static Told of(Catalogue catalogue, List<Pairing> pairings) {
    Reader reader = new Reader(catalogue);
    for (int i = 0; i < pairings.size() && reader.takes(i); i++) {
      reader.read(i, pairings.get(i));
    }
    return reader.told();
  }

  /** Whether all that was given counts. */
  public boolean isClean() {
    return misread.isEmpty();
  }

  private static final class Reader {
    private final Catalogue catalogue;
    private final Set<String> features = new HashSet<>();
    private final List<Seen> seen = new ArrayList<>();
    private final List<Misread> misread = new ArrayList<>();

    Reader(Catalogue catalogue) {
      this.catalogue = catalogue;
    }

    boolean takes(int index) {
      if (index == MOST) {
        misread(index, Misread.Why.TOO_MANY, String.valueOf(MOST), null);
      }
      return index < MOST;
    }

    void read(int index, Pairing given) {
      Feature feature = catalogue.feature(given.feature().strip()).orElse(null);
      if (feature == null) {
        misread(index, Misread.Why.FEATURE, given.feature().strip(), null);
        return;
      }
      Optional<Seen> read = Seen.read(feature, given.value());
      if (read.isEmpty()) {
        Misread.Why why = feature.isNumber() ? Misread.Why.NUMBER : Misread.Why.VALUE;
        misread(index, why, given.value().strip(), feature);
      } else if (features.add(feature.key())) {
        seen.add(read.get());
      } else {
        misread(index, Misread.Why.TWICE, read.get().value(), feature);
      }
    }

    void misread(int index, Misread.Why why, String text, @Nullable Feature feature) {
      misread.add(new Misread(index, why, text, feature));
    }

    Told told() {
      return new Told(seen, misread);
    }
  }
}
