package club.yearline.catalog;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.ProductionRun;
import club.yearline.effectivity.SerialMatch;
import club.yearline.effectivity.SerialText;
import club.yearline.effectivity.SoldName;
import club.yearline.effectivity.Variant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Says what a typed text may mean: a serial, a variant and year in any order, a name, a year, words
 * of the catalogue. Case, accents, spaces and hyphens do not count; small slips are forgiven.
 */
public final class Finder {

  /** The longest text that is read, in characters. */
  public static final int MAX_LENGTH = 100;

  /** The most hits that are listed. */
  public static final int MOST = 60;

  private static final int MOST_WORDS = 10;

  /** Kinds in the order in which they are offered; serials come first, stray ones last. */
  private static final List<Class<? extends Meaning>> OFFERED =
      List.of(
          Meaning.OfYear.class,
          Meaning.OfVariant.class,
          Meaning.OfFamily.class,
          Meaning.OfMaker.class,
          Meaning.OfFeature.class,
          Meaning.OfValue.class,
          Meaning.OfRetrofit.class,
          Meaning.OfSource.class);

  private static final Comparator<Found.Hit> BEST_FIRST =
      Comparator.comparing(Found.Hit::closeness).thenComparingInt(h -> rank(h.meaning()));

  private final Catalogue catalogue;
  private final Vocabulary vocabulary;

  private Finder(Catalogue catalogue, Vocabulary vocabulary) {
    this.catalogue = catalogue;
    this.vocabulary = vocabulary;
  }

  /** The finder of a catalogue; its words are gathered once for each catalogue. */
  public static Finder of(Catalogue catalogue) {
    return new Finder(catalogue, Vocabularies.of(catalogue));
  }

  /**
   * Finds what a text may mean.
   *
   * @throws IllegalArgumentException if it has more than {@value #MAX_LENGTH} characters
   */
  public Found find(String typed) {
    String text = typed.strip();
    if (text.length() > MAX_LENGTH) {
      throw new IllegalArgumentException(
          "At most " + MAX_LENGTH + " characters are read; this text has " + text.length());
    }
    List<TypedText> readings = TypedText.readings(text);
    Search search = new Search(text);
    if (readings.get(0).words().size() <= MOST_WORDS) {
      readings.forEach(search::read);
    }
    search.readSerials(readings);
    return search.found(readings);
  }

  private static int rank(Meaning meaning) {
    if (meaning instanceof Meaning.OfSerial serial) {
      return serial.outsideBlocks() ? OFFERED.size() + 1 : 0;
    }
    return OFFERED.indexOf(meaning.getClass()) + 1;
  }

  /** One text being looked up. */
  private final class Search {

    private final String text;
    private final Map<Meaning, Closeness> hits = new LinkedHashMap<>();
    private Set<String> unread = Set.of();
    private @Nullable Integer year;

    Search(String text) {
      this.text = text;
    }

    void read(TypedText reading) {
      if (reading.words().isEmpty()) {
        producedIn(reading);
        return;
      }
      vocabulary.named(reading.name()).forEach(n -> add(n, reading, Closeness.EXACT));
      // A rest of words beside two digits is no reason to guess a century.
      if (reading.shortYear()) {
        return;
      }
      Vocabulary.Matches matches = vocabulary.search(reading.words());
      matches.named().forEach(n -> add(n, reading, matches.closeness()));
      if (reading.year() == null || !matches.named().isEmpty()) {
        unread = new LinkedHashSet<>(matches.unread());
      }
    }

    private void producedIn(TypedText reading) {
      if (reading.year() == null || reading.shortYear()) {
        return;
      }
      int asked = reading.year();
      year = asked;
      catalogue.records().variants().stream()
          .filter(v -> produced(v, asked))
          .forEach(v -> hit(new Meaning.OfYear(v, asked), Closeness.EXACT));
    }

    private void add(Named found, TypedText reading, Closeness closeness) {
      if (reading.year() == null) {
        hit(found.meaning(), closeness);
        return;
      }
      List<Variant> variants = variants(found.meaning());
      List<Meaning.OfYear> years =
          variants.stream().flatMap(v -> years(v, found.name(), reading.year())).toList();
      years.forEach(y -> hit(y, closeness));
      if (!reading.shortYear()) {
        year = reading.year();
        if (years.isEmpty()) {
          // Not produced then: worth offering, but not what was asked for.
          Closeness rest = variants.isEmpty() ? Closeness.BEGINNING : Closeness.OTHER_YEAR;
          hit(found.meaning(), closeness.orWorse(rest));
        }
      }
    }

    private List<Variant> variants(Meaning meaning) {
      if (meaning instanceof Meaning.OfVariant variant) {
        return List.of(variant.variant());
      }
      return meaning instanceof Meaning.OfFamily family
          ? catalogue.variantsOf(family.family().key())
          : List.of();
    }

    private void hit(Meaning meaning, Closeness closeness) {
      hits.merge(meaning, closeness, (a, b) -> a.compareTo(b) <= 0 ? a : b);
    }

    /** Reads the whole text as a serial, and the rest of it where it ends or begins with a year. */
    void readSerials(List<TypedText> readings) {
      boolean oneWord = Words.of(text).size() == 1;
      boolean anythingExact = hits.containsValue(Closeness.EXACT);
      List<SerialMatch> matches = new ArrayList<>(serials(text));
      readings.stream()
          .filter(r -> r.year() != null && !r.words().isEmpty() && !r.shortYear())
          .flatMap(r -> serials(String.join(" ", r.words())).stream())
          .filter(m -> !m.blocks().isEmpty())
          .forEach(matches::add);
      boolean held = matches.stream().anyMatch(m -> !m.blocks().isEmpty());
      for (SerialMatch match : matches) {
        match.blocks().forEach(b -> hit(new Meaning.OfSerial(match, b), Closeness.EXACT));
        // Several words that only together look like a serial outside all blocks are no serial.
        if (match.blocks().isEmpty() && (oneWord || !(held || anythingExact))) {
          hit(new Meaning.OfSerial(match, null), Closeness.EXACT);
        }
      }
    }

    private List<SerialMatch> serials(String typed) {
      return typed.length() > SerialText.MAX_LENGTH ? List.of() : catalogue.read(typed);
    }

    Found found(List<TypedText> readings) {
      boolean sure = hits.values().stream().anyMatch(c -> c != Closeness.NEAR);
      List<Found.Hit> best =
          hits.entrySet().stream()
              .filter(e -> !sure || e.getValue() != Closeness.NEAR)
              .map(e -> new Found.Hit(e.getKey(), e.getValue()))
              .sorted(BEST_FIRST)
              .toList();
      if (year == null) {
        year =
            readings.stream()
                .map(TypedText::year)
                .filter(y -> y != null && y > 99)
                .findFirst()
                .orElse(null);
      }
      return new Found(
          text,
          best.stream().limit(MOST).toList(),
          year,
          sure ? List.of() : List.copyOf(unread),
          best.size() > MOST);
    }
  }

  private static boolean produced(Variant variant, int year) {
    return variant.runs().stream().anyMatch(r -> r.covers(year));
  }

  /** The year, if the variant was produced and sold under the name then; two digits if unique. */
  private static Stream<Meaning.OfYear> years(Variant variant, String name, int year) {
    int[] meant = year > 99 ? new int[] {year} : ofTwoDigits(variant, year);
    if (meant.length != 1 || !produced(variant, meant[0])) {
      return Stream.of();
    }
    List<SoldName> sold =
        variant.names().stream().filter(n -> n.name().equalsIgnoreCase(name)).toList();
    boolean named =
        sold.isEmpty()
            || name.equals(variant.designation())
            || sold.stream().anyMatch(n -> covers(n, meant[0]));
    return named ? Stream.of(new Meaning.OfYear(variant, meant[0])) : Stream.of();
  }

  private static boolean covers(SoldName name, int year) {
    return (name.firstYear() == null || name.firstYear() <= year)
        && (name.lastYear() == null || year <= name.lastYear());
  }

  /** The produced years with these last two digits; a run without end lends none of its own. */
  private static int[] ofTwoDigits(Variant variant, int digits) {
    return variant.runs().stream()
        .flatMapToInt(Finder::certainYears)
        .filter(y -> y % 100 == digits)
        .distinct()
        .limit(2)
        .toArray();
  }

  private static IntStream certainYears(ProductionRun run) {
    int last = run.lastYear() == null ? run.firstYear() : run.lastYear();
    return IntStream.rangeClosed(run.firstYear(), last);
  }
}
