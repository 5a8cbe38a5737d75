package club.yearline.catalog;

import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.SerialMatch;
import club.yearline.effectivity.SourceEntry;
import club.yearline.effectivity.Variant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a typed text may mean. The kinds are declared in the order in which they are offered. */
public sealed interface Meaning {

  /**
   * A serial of a series.
   *
   * @param match the series, the serial, and the blocks that hold it or are nearest to it
   * @param block the one of its blocks that is meant; null where no block holds it
   */
  record OfSerial(SerialMatch match, @Nullable SerialBlock block) implements Meaning {

    /** Whether the serial fits the series but no block of it. */
    public boolean outsideBlocks() {
      return block == null;
    }
  }

  /** A variant in a year in which it was produced. */
  record OfYear(Variant variant, int year) implements Meaning {}

  /** A variant, by its designation or a name it was sold under. */
  record OfVariant(Variant variant) implements Meaning {}

  /** A family. */
  record OfFamily(Family family) implements Meaning {}

  /** A company, with the families it built. */
  record OfMaker(String maker, List<Family> families) implements Meaning {

    public OfMaker {
      families = List.copyOf(families);
    }
  }

  /** A feature. */
  record OfFeature(Feature feature) implements Meaning {}

  /** A value of a feature. */
  record OfValue(Feature feature, FeatureValue value) implements Meaning {}

  /** A retrofit, by the approval or kit that a logbook names. */
  record OfRetrofit(Retrofit retrofit) implements Meaning {}

  /** A source, by its title or its document number. */
  record OfSource(SourceEntry source) implements Meaning {}
}
