package club.yearline.exchange;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Possible;
import club.yearline.effectivity.Question;
import club.yearline.effectivity.Records;
import club.yearline.effectivity.State;
import club.yearline.effectivity.Stretch;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * Puts the questions of a table to a catalogue read from a package, and writes answers as texts.
 */
public final class Asking {

  private static final CSVFormat TABLE =
      CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();

  private Asking() {}

  public static Catalogue catalogue(Path folder) {
    return Catalogue.of(records(folder));
  }

  static Records records(Path folder) {
    try {
      PackageReading reading = PackageReader.read(folder);
      if (reading.isRefused()) {
        throw new AssertionError("The package is refused: " + reading.problems());
      }
      return reading.records();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static List<CSVRecord> rows(Path table) {
    try (Reader reader = Files.newBufferedReader(table)) {
      return TABLE.parse(reader).getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Located ask(Catalogue catalogue, String variant, String year, String serial) {
    return catalogue.locate(
        new Question(
            variant.isEmpty() ? null : variant,
            year.isEmpty() ? null : Integer.valueOf(year),
            serial.isEmpty() ? null : serial));
  }

  static Answer answer(Catalogue catalogue, Position position, String feature) {
    return catalogue.expected(position).stream()
        .filter(a -> a.feature().key().equals(feature))
        .findFirst()
        .orElseThrow(() -> new AssertionError(position + " has no feature " + feature));
  }

  /** The answer as the tables write it; options are marked where told. */
  static String text(Answer answer, boolean markOptions) {
    if (answer.state() == State.SPLITS) {
      return answer.stretches().stream()
          .map(s -> stretch(s, markOptions))
          .collect(Collectors.joining("; "));
    }
    return offerings(answer, markOptions);
  }

  private static String stretch(Stretch stretch, boolean markOptions) {
    String serials =
        stretch.first().equals(stretch.last())
            ? stretch.firstText()
            : stretch.firstText() + ".." + stretch.lastText();
    return serials + "=" + offerings(stretch.answer(), markOptions);
  }

  private static String offerings(Answer answer, boolean markOptions) {
    return answer.possible().isEmpty()
        ? "nothing"
        : answer.possible().stream()
            .map(p -> offering(p, markOptions))
            .collect(Collectors.joining(" / "));
  }

  private static String offering(Possible possible, boolean markOptions) {
    return possible.isNothing()
        ? "nothing"
        : possible.offering().stream()
            .map(o -> value(o, markOptions))
            .sorted()
            .collect(Collectors.joining("|"));
  }

  private static String value(Offered offered, boolean markOptions) {
    boolean marked = markOptions && offered.fit() == Fit.OPTION;
    return offered.canonicalValue() + (marked ? ":option" : "");
  }
}
