package club.yearline.expected;

import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Question;
import club.yearline.effectivity.VariantModel;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** A pasted list of serials, each with its answer. */
final class SerialList {

  /** The longest list that is answered. */
  static final int MOST = 500;

  /** The most features that a table has room for. */
  static final int MOST_FEATURES = 8;

  private static final Pattern BETWEEN = Pattern.compile("[\\s]*[\\n\\r,;]+[\\s]*");

  private final Catalogue catalogue;
  private final Links links;
  private final Phrases phrases;
  private final Rows rows;
  private final Plate plate;
  private final Troubles troubles;
  private final List<Feature> columns;
  private final Map<Object, Integer> seen = new HashMap<>();
  private final Map<String, Feature> features = new LinkedHashMap<>();

  SerialList(Links links, Wording wording, Phrases phrases, List<String> columns) {
    this.catalogue = links.reading().catalogue();
    this.links = links;
    this.phrases = phrases;
    this.rows = new Rows(links, wording, phrases);
    this.plate = new Plate(links, wording, phrases);
    this.troubles = new Troubles(links, wording, phrases);
    this.columns = columns.stream().flatMap(c -> catalogue.feature(c).stream()).toList();
  }

  /**
   * A row of the table.
   *
   * @param serial as stamped, or as typed where it is none
   * @param href its answer, or the page that says what to do
   * @param variant the variant; empty where there is no answer
   * @param year the year
   * @param block the block that holds it
   * @param problem why there is no answer; null where there is one
   * @param repeats which row it repeats; null where none
   * @param cells the answers of the chosen features
   */
  record Entry(
      String serial,
      String href,
      String variant,
      String year,
      String block,
      @Nullable String problem,
      @Nullable String repeats,
      List<String> cells) {}

  /** The serials of a pasted text, as typed. */
  static List<String> split(String text) {
    return Arrays.stream(BETWEEN.split(text.strip())).filter(s -> !s.isBlank()).toList();
  }

  List<Entry> of(List<String> typed) {
    List<Entry> entries = new ArrayList<>(typed.size());
    for (String serial : typed) {
      entries.add(entry(serial, entries.size() + 1));
    }
    return entries;
  }

  /** The features that have a column, in the order asked for. */
  List<Feature> columns() {
    return columns;
  }

  /** The features of the variants found so far, by chapter and name. */
  List<Feature> features() {
    return features.values().stream()
        .sorted(Comparator.comparing(Feature::chapter).thenComparing(Feature::name))
        .toList();
  }

  private Entry entry(String typed, int number) {
    Question question = new Question(null, null, typed);
    Located located = catalogue.locate(question);
    if (located instanceof Located.Found found) {
      return found(found, repeats(found.position(), number));
    }
    String shown = Troubles.shortened(typed);
    String problem = troubles.of(located, question).title();
    String repeats = repeats(typed.toUpperCase(Locale.ROOT), number);
    return new Entry(
        shown, links.expected(null, null, shown), "", "", "", problem, repeats, List.of());
  }

  private Entry found(Located.Found found, @Nullable String repeats) {
    Position position = found.position();
    VariantModel model = catalogue.model(position.variant().key()).orElseThrow();
    model.timelines().forEach(t -> features.putIfAbsent(t.feature().key(), t.feature()));
    return new Entry(
        String.valueOf(position.serialText()),
        links.expected(position),
        position.variant().designation(),
        position.year() == null ? phrases.of("expected.year.unknown") : "" + position.year(),
        found.block() == null ? "" : plate.serials(found.block()),
        null,
        repeats,
        cells(position));
  }

  private List<String> cells(Position position) {
    if (columns.isEmpty()) {
      return List.of();
    }
    Map<String, Answer> answers = new HashMap<>();
    catalogue.expected(position).forEach(a -> answers.put(a.feature().key(), a));
    return columns.stream().map(c -> rows.text(answers.get(c.key()))).toList();
  }

  private @Nullable String repeats(Object key, int number) {
    Integer first = seen.putIfAbsent(key, number);
    return first == null ? null : phrases.of("expected.list.repeats", first);
  }
}
