package club.yearline.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Series;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Real published serials, years and figures go through import and query and give what the documents
 * say. The source of each row stands in the row; see {@code published/README.md}.
 */
class PublishedValuesTest {

  private static final Path PUBLISHED = Path.of("src/test/resources/published");
  private static final Catalogue CATALOGUE = Asking.catalogue(PUBLISHED.resolve("package"));

  static List<CSVRecord> expectations() {
    return Asking.rows(PUBLISHED.resolve("expectations.csv"));
  }

  @ParameterizedTest
  @MethodSource("expectations")
  void publishedRowIsAnswered(CSVRecord row) {
    Located located =
        Asking.ask(
            CATALOGUE,
            row.get("question_variant"),
            row.get("question_year"),
            row.get("question_serial"));
    assertThat(outcome(located, row)).as(row.toString()).isEqualTo(row.get("state"));
    assertThat(values(located, row)).as(row.toString()).isEqualTo(sorted(row.get("values")));
  }

  @Test
  void atLeastFortyRowsComeFromDocuments() {
    assertThat(expectations())
        .filteredOn(r -> !r.get("status").equals("MEMORY"))
        .hasSizeGreaterThanOrEqualTo(40);
  }

  @ParameterizedTest
  @MethodSource("orderings")
  void publishedSerialsStandInTheirOrder(CSVRecord row) {
    String prefix = row.get("prefix");
    boolean suffixed = Boolean.parseBoolean(row.get("year_suffix"));
    Series series = new Series("s", "f", prefix, null, suffixed, null, List.of());
    List<String> ordered = List.of(row.get("serials").split("\\|"));
    List<String> shuffled =
        ordered.stream().sorted(Comparator.reverseOrder()).collect(Collectors.toList());
    shuffled.sort(Comparator.comparing(text -> series.read(text).orElseThrow()));
    assertThat(shuffled).as(row.toString()).isEqualTo(ordered);
  }

  static List<CSVRecord> orderings() {
    return Asking.rows(PUBLISHED.resolve("ordering.csv"));
  }

  private static String outcome(Located located, CSVRecord row) {
    if (located instanceof Located.Found found) {
      return row.get("feature").isEmpty()
          ? "resolves"
          : answer(found.position(), row).state().code();
    }
    if (located instanceof Located.NoBlock) {
      return "no-block";
    }
    if (located instanceof Located.Contradiction) {
      return "contradicts-block";
    }
    if (located instanceof Located.OutsideProduction) {
      return "outside-production";
    }
    return located instanceof Located.Ambiguous ? "ambiguous" : located.toString();
  }

  private static String values(Located located, CSVRecord row) {
    if (located instanceof Located.Found found) {
      return row.get("feature").isEmpty()
          ? place(found.position())
          : sorted(Asking.text(answer(found.position(), row), false));
    }
    if (located instanceof Located.Ambiguous ambiguous) {
      return joined(ambiguous.candidates().stream().map(PublishedValuesTest::place));
    }
    return located instanceof Located.Contradiction contradiction
        ? joined(contradiction.blocks().stream().map(PublishedValuesTest::place))
        : "";
  }

  private static Answer answer(Position position, CSVRecord row) {
    return Asking.answer(CATALOGUE, position, row.get("feature"));
  }

  private static String place(Position position) {
    return position.variant().key() + ":" + (position.year() == null ? "" : position.year());
  }

  private static String place(SerialBlock block) {
    return block.variant() + ":" + (block.year() == null ? "" : block.year());
  }

  private static String joined(Stream<String> places) {
    return places.distinct().sorted().collect(Collectors.joining("|"));
  }

  /** The values of each offering in a stable order. */
  private static String sorted(String values) {
    return Stream.of(values.split(" / "))
        .map(o -> Stream.of(o.split("\\|")).sorted().collect(Collectors.joining("|")))
        .collect(Collectors.joining(" / "));
  }
}
