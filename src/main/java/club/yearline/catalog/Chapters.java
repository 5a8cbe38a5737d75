package club.yearline.catalog;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.springframework.stereotype.Component;

/** The ATA/JASC chapters by which features are grouped. */
@Component
public class Chapters {

  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  private final Map<String, String> titles;

  public Chapters() {
    Map<String, String> read = new LinkedHashMap<>();
    try (InputStream in =
            Objects.requireNonNull(Chapters.class.getResourceAsStream("/jasc/chapters.csv"));
        InputStreamReader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      for (CSVRecord row : FORMAT.parse(reader)) {
        read.put(row.get("code"), sentenceCase(row.get("title")));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    titles = Collections.unmodifiableMap(read);
  }

  /** The title of a two-digit chapter; empty where the standard has no such chapter. */
  public Optional<String> title(String code) {
    return Optional.ofNullable(titles.get(code));
  }

  /** All chapters in order, titles by code. */
  public Map<String, String> all() {
    return titles;
  }

  /** The standard prints its titles in capitals, which are tiring to read in a list. */
  private static String sentenceCase(String title) {
    StringBuilder text = new StringBuilder(title.toLowerCase(Locale.ROOT));
    for (int i = 0; i < text.length(); i++) {
      if (i == 0 || text.charAt(i - 1) == '/') {
        text.setCharAt(i, Character.toUpperCase(text.charAt(i)));
      }
    }
    return text.toString();
  }
}
