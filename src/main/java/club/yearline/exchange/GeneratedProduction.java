package club.yearline.exchange;

import club.yearline.effectivity.Descent;
import club.yearline.effectivity.ProductionRun;
import club.yearline.effectivity.Relation;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.SoldName;
import club.yearline.effectivity.Variant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Invents a family's variants, and its serials by year: five variants, two series, fifty blocks.
 */
final class GeneratedProduction {

  static final int VARIANTS = 5;

  /** Variants up to this one are counted in the first series, the others in the second. */
  private static final int IN_FIRST_SERIES = 3;

  private static final int YEARS = 10;
  private static final int FIRST_YEAR = 1946;
  private static final int SMALLEST_BLOCK = 20;
  private static final int LARGEST_BLOCK = 150;

  private final String family;
  private final int index;
  private final Random random;
  private final GeneratedEvidence evidence;
  private final List<Variant> variants = new ArrayList<>();
  private final List<Series> series = new ArrayList<>();
  private final List<SerialBlock> blocks = new ArrayList<>();

  GeneratedProduction(String family, int index, Random random, GeneratedEvidence evidence) {
    this.family = family;
    this.index = index;
    this.random = random;
    this.evidence = evidence;
    for (int i = 0; i < VARIANTS; i++) {
      variants.add(variant(i));
    }
    addSeries("a", "", variants.subList(0, IN_FIRST_SERIES));
    addSeries("b", "X", variants.subList(IN_FIRST_SERIES, VARIANTS));
  }

  List<Variant> variants() {
    return variants;
  }

  List<Series> series() {
    return series;
  }

  List<SerialBlock> blocks() {
    return blocks;
  }

  private Variant variant(int i) {
    String key = key(i);
    int first = FIRST_YEAR + index % 20 + 2 * i;
    List<Descent> descent =
        i == 0 ? List.of() : List.of(new Descent(key(i - 1), Relation.DEVELOPED_INTO, null));
    return new Variant(
        key,
        family,
        "G" + index + "-" + (char) ('A' + i),
        null,
        null,
        names(i, first),
        runs(i, first),
        descent,
        List.of(evidence.supporting()));
  }

  private String key(int variant) {
    return family + "-" + (char) ('a' + variant);
  }

  /** The first variant was out of production for two years, and sold under two names. */
  private static List<ProductionRun> runs(int i, int first) {
    int half = YEARS / 2;
    return i == 0
        ? List.of(
            new ProductionRun(first, first + half - 1, null),
            new ProductionRun(first + half + 2, first + YEARS + 1, null))
        : List.of(new ProductionRun(first, first + YEARS - 1, null));
  }

  private List<SoldName> names(int i, int first) {
    SoldName name = new SoldName(GeneratedFamily.name(index) + " " + (i + 1), first, null);
    return i == 0
        ? List.of(name, new SoldName(GeneratedFamily.name(index) + " Club", first + 2, first + 3))
        : List.of(name);
  }

  private void addSeries(String letter, String mark, List<Variant> counted) {
    String key = family + "-series-" + letter;
    String prefix = letters(index) + mark + "-";
    Series made = new Series(key, family, prefix, 4, false, null, List.of(evidence.supporting()));
    series.add(made);
    int next = 1;
    for (int year = FIRST_YEAR; year < FIRST_YEAR + 60; year++) {
      for (Variant variant : counted) {
        int built = year;
        if (variant.runs().stream().anyMatch(r -> r.covers(built))) {
          next = addBlock(made, variant, year, next);
        }
      }
    }
  }

  /** Adds the block that begins at an ordinal, and tells where the next one begins. */
  private int addBlock(Series of, Variant variant, int year, int first) {
    int last = first + SMALLEST_BLOCK + random.nextInt(LARGEST_BLOCK - SMALLEST_BLOCK);
    int number = blocks.size();
    blocks.add(
        new SerialBlock(
            String.format("%s-block-%02d", family, number),
            of.key(),
            serial(of, first),
            serial(of, last),
            variant.key(),
            year,
            false,
            number % 2 == 0 ? List.of(evidence.supporting()) : List.of()));
    return last + 1 + (random.nextInt(20) == 0 ? random.nextInt(8) : 0);
  }

  static String serial(Series series, int ordinal) {
    return String.format("%s%04d", series.prefix(), ordinal);
  }

  /** Three letters for a number below 17,576. */
  private static String letters(int number) {
    return ""
        + (char) ('A' + number / 676 % 26)
        + (char) ('A' + number / 26 % 26)
        + (char) ('A' + number % 26);
  }
}
