package club.yearline.effectivity;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;

/** Serials, slowly: read by pattern, found by walking over every serial there is (section 3). */
final class SlowSerials {

  private static final Pattern COUNTED = Pattern.compile("0*([0-9]{1,18})([A-Z]?)");
  private static final Pattern YEAR_AT_END = Pattern.compile("(.*)[-./]([0-9]{2}|[0-9]{4})");

  private final Records records;
  private final Map<String, Map<String, Serial>> known = new HashMap<>();
  private final Map<String, List<SerialBlock>> bySeries = new HashMap<>();
  private final Map<String, List<SerialBlock>> byVariant = new HashMap<>();
  private final Map<String, List<Serial>> walked = new HashMap<>();

  SlowSerials(Records records) {
    this.records = records;
  }

  Series series(String key) {
    return records.series().stream().filter(s -> s.key().equals(key)).findFirst().orElseThrow();
  }

  /** Reads a text; null where it does not belong to the series. */
  static @Nullable Serial read(Series series, String typed) {
    String text = normal(typed);
    Matcher year = YEAR_AT_END.matcher(text);
    if (series.yearSuffix() && year.matches() && isYear(year.group(2))) {
      Serial withoutYear = counted(series, year.group(1));
      if (withoutYear != null) {
        return withoutYear;
      }
    }
    return counted(series, text);
  }

  private static String normal(String typed) {
    return typed
        .trim()
        .toUpperCase(Locale.ROOT)
        .replaceAll("[\\p{Pd}\u2043\u2053\u207B\u208B\u2212]", "-")
        .replaceAll("[\\s\\p{Z}]", "");
  }

  private static boolean isYear(String digits) {
    int year = Integer.parseInt(digits);
    return digits.length() == 2 || (1903 <= year && year <= 2200);
  }

  private static @Nullable Serial counted(Series series, String text) {
    String prefix = bare(normal(series.prefix() == null ? "" : series.prefix()));
    if (!bare(text).startsWith(prefix)) {
      return null;
    }
    Matcher rest = COUNTED.matcher(bare(text).substring(prefix.length()));
    if (!rest.matches()) {
      return null;
    }
    char letter = rest.group(2).isEmpty() ? Serial.NO_SUFFIX : rest.group(2).charAt(0);
    return new Serial(Long.parseLong(rest.group(1)), letter);
  }

  private static String bare(String text) {
    return text.replaceAll("[-./ ]", "");
  }

  /** Negative, zero or positive: by ordinal, then no letter, then A, then B. */
  static int order(Serial one, Serial other) {
    if (one.ordinal() != other.ordinal()) {
      return one.ordinal() < other.ordinal() ? -1 : 1;
    }
    return one.suffix() - other.suffix();
  }

  /** A serial as some record names it. */
  Serial recorded(String series, String text) {
    return known
        .computeIfAbsent(series, s -> new HashMap<>())
        .computeIfAbsent(text, t -> read(series(series), t));
  }

  Serial first(SerialBlock block) {
    return recorded(block.series(), block.firstSerial());
  }

  boolean holds(SerialBlock block, Serial serial) {
    return order(first(block), serial) <= 0
        && (block.lastSerial() == null
            || order(serial, recorded(block.series(), block.lastSerial())) <= 0);
  }

  /** Every serial that any record names in a series. */
  List<Serial> named(String series) {
    List<@Nullable String> texts = new ArrayList<>();
    for (SerialBlock block : blocksOf(series)) {
      texts.add(block.firstSerial());
      texts.add(block.lastSerial());
    }
    for (Change change : records.changes()) {
      for (CutIn cutIn : change.cutIns()) {
        if (series.equals(cutIn.series())) {
          texts.add(cutIn.firstSerial());
          texts.add(cutIn.settledSerial());
        }
      }
    }
    for (Retrofit retrofit : records.retrofits()) {
      if (series.equals(retrofit.series())) {
        texts.add(retrofit.firstSerial());
        texts.add(retrofit.lastSerial());
      }
    }
    return texts.stream().filter(t -> t != null).map(t -> recorded(series, t)).toList();
  }

  /** All serials from 0 to the highest ordinal named, and the lettered ones named. */
  List<Serial> all(String series) {
    return walked.computeIfAbsent(
        series,
        s -> {
          List<Serial> named = named(s);
          long highest = named.stream().mapToLong(Serial::ordinal).max().orElse(0);
          TreeSet<Serial> every = new TreeSet<>(SlowSerials::order);
          LongStream.rangeClosed(0, highest).mapToObj(Serial::of).forEach(every::add);
          every.addAll(named);
          return List.copyOf(every);
        });
  }

  List<SerialBlock> blocksOf(String series) {
    return bySeries.computeIfAbsent(
        series, s -> records.blocks().stream().filter(b -> b.series().equals(s)).toList());
  }

  List<SerialBlock> blocksOfVariant(String variant) {
    return byVariant.computeIfAbsent(
        variant, v -> records.blocks().stream().filter(b -> b.variant().equals(v)).toList());
  }

  /** The serials by which a block's ordinals count: the plain one, or the lettered first one. */
  List<Serial> counted(SerialBlock block) {
    return all(block.series()).stream()
        .filter(s -> holds(block, s))
        .filter(s -> s.suffix() == Serial.NO_SUFFIX || s.equals(first(block)))
        .toList();
  }

  /** Which part of a serial counts in each of the blocks that hold it. */
  double part(String series, Serial serial) {
    return 1.0 / blocksOf(series).stream().filter(b -> holds(b, serial)).count();
  }
}
