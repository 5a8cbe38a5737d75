package club.yearline.testing;

import club.yearline.effectivity.Change;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Picture;
import club.yearline.effectivity.Records;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.Variant;
import club.yearline.effectivity.YearMeaning;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/**
 * Small random catalogues, each a function of its seed. They have no error among their findings,
 * but warnings and notes aplenty: ends in gaps, years outside runs, overlapping windows, serials
 * that fit two families. Ordinals stay below 60, so that a plain loop over every serial is cheap.
 */
public final class Catalogues {

  private static final int FIRST_YEAR = 1960;

  private final Dice dice;
  private final Evidence evidence;
  private final List<Entry> entries = new ArrayList<>();
  private final List<Variant> variants = new ArrayList<>();
  private final List<Series> series = new ArrayList<>();
  private final List<Picture> pictures = new ArrayList<>();

  private Catalogues(long seed) {
    this.dice = new Dice(seed);
    this.evidence = new Evidence(dice);
  }

  /** The catalogue of the given seed. */
  public static Records random(long seed) {
    return new Catalogues(seed).make();
  }

  /** The bytes of a picture that a random catalogue names. */
  public static byte[] pictureBytes(String name) {
    return ("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 8 8\"><title>"
            + name
            + "</title><path d=\"M0 0h8v8z\"/></svg>\n")
        .getBytes(StandardCharsets.UTF_8);
  }

  private Records make() {
    entries.addAll(evidence.sources());
    int families = dice.between(1, 3);
    for (int i = 0; i < families; i++) {
      addFamily("family-" + i);
    }
    List<Feature> features = new RandomFeatures(dice, evidence, this::picture).make();
    entries.addAll(features);
    entries.addAll(new RandomChanges(dice, evidence, variants, series).of(features));
    entries.addAll(new RandomRetrofits(dice, evidence, variants, series).of(features));
    return Records.of(entries, pictures);
  }

  private void addFamily(String key) {
    entries.add(
        new Family(
            key,
            dice.pick("Lindmark Aero", "Ostrava & Söhne", "\"Quoted\", Ltd"),
            "Family " + key,
            dice.maybe(0.5, "TC-" + dice.between(1, 99)),
            dice.pick(YearMeaning.values()),
            dice.maybe(0.3, new BigDecimal(dice.pick("6.0", "6.01", "5.87"))),
            evidence.text(),
            evidence.citations(null)));
    List<Variant> own = addVariants(key);
    addSeries(key, own);
  }

  private List<Variant> addVariants(String family) {
    List<Variant> own = new ArrayList<>();
    int count = dice.between(1, 3);
    for (int i = 0; i < count; i++) {
      String key = "v-" + variants.size();
      String picture = dice.maybe(0.3, picture(key));
      Variant variant =
          new RandomVariants(dice, evidence).make(key, family, picture, FIRST_YEAR, variants);
      variants.add(variant);
      own.add(variant);
    }
    entries.addAll(own);
    return own;
  }

  private void addSeries(String family, List<Variant> own) {
    int count = dice.between(1, 2);
    for (int i = 0; i < count; i++) {
      RandomSeries random = new RandomSeries(dice, evidence, own, FIRST_YEAR);
      Series made = random.make("series-" + series.size(), family);
      series.add(made);
      entries.add(made);
      entries.addAll(random.blocks(made));
    }
  }

  /** Records a picture and returns its name. */
  private String picture(String stem) {
    String name = stem + ".svg";
    pictures.add(new Picture(name, "image/svg+xml", sha256(pictureBytes(name))));
    return name;
  }

  private static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /** All changes of one feature that have a cut-in for the variant: a help for plain evaluators. */
  public static List<Change> changes(Records records, String feature, String variant) {
    return records.changes().stream()
        .filter(c -> c.feature().equals(feature) && c.cutIn(variant).isPresent())
        .toList();
  }
}
