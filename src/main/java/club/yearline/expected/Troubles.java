package club.yearline.expected;

import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.ProductionRun;
import club.yearline.effectivity.Question;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.SerialMatch;
import club.yearline.effectivity.SerialText;
import club.yearline.effectivity.Variant;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Puts a question that has no answer into words, with the answers that may be meant. */
public final class Troubles {

  private static final int BAD_REQUEST = 400;
  private static final int NOT_FOUND = 404;
  private static final int UNPROCESSABLE = 422;

  /** How much of a typed text is repeated. */
  private static final int ECHO = 60;

  private final Catalogue catalogue;
  private final Links links;
  private final Wording wording;
  private final Phrases phrases;
  private final Plate plate;
  private final Destination ways;

  Troubles(Links links, Wording wording, Phrases phrases) {
    this(links, wording, phrases, links::expected);
  }

  /**
   * Troubles of another page.
   *
   * @param ways where what may be meant leads
   */
  public Troubles(Links links, Wording wording, Phrases phrases, Destination ways) {
    this.ways = ways;
    this.catalogue = links.reading().catalogue();
    this.links = links;
    this.wording = wording;
    this.phrases = phrases;
    this.plate = new Plate(links, wording, phrases);
  }

  /** A year was typed that is no year. */
  public Trouble yearUnreadable(String typed) {
    return trouble(BAD_REQUEST, "year", "year", List.of(), shortened(typed));
  }

  /** Why a question that was not found has no answer. */
  public Trouble of(Located located, Question question) {
    if (located instanceof Located.TooLong tooLong) {
      return trouble(
          BAD_REQUEST, "serial", "too-long", List.of(), tooLong.length(), SerialText.MAX_LENGTH);
    }
    if (located instanceof Located.UnknownVariant unknown) {
      return trouble(NOT_FOUND, "variant", "no-variant", List.of(), shortened(unknown.key()));
    }
    if (located instanceof Located.OutsideProduction outside) {
      return trouble(
          UNPROCESSABLE,
          "year",
          "outside",
          years(outside.variant()),
          outside.variant().designation(),
          outside.year(),
          runs(outside.runs()));
    }
    return located instanceof Located.Incomplete ? incomplete(question) : ofSerial(located);
  }

  private Trouble ofSerial(Located located) {
    if (located instanceof Located.NoSeries none) {
      Variant variant = none.variant();
      return variant == null
          ? trouble(NOT_FOUND, "serial", "no-series", List.of(), none.text().strip())
          : trouble(
              UNPROCESSABLE,
              "serial",
              "other-series",
              List.of(),
              none.text().strip(),
              variant.designation());
    }
    if (located instanceof Located.NoBlock noBlock) {
      return noBlock(noBlock);
    }
    if (located instanceof Located.Ambiguous ambiguous) {
      return trouble(
          UNPROCESSABLE,
          "serial",
          "several",
          ambiguous.candidates().stream().map(this::way).toList(),
          ambiguous.text().strip());
    }
    if (located instanceof Located.Contradiction contradiction) {
      return contradiction(contradiction);
    }
    throw new IllegalArgumentException("No trouble: " + located);
  }

  private Trouble incomplete(Question question) {
    Optional<Variant> variant = Optional.ofNullable(question.variant()).flatMap(catalogue::variant);
    if (variant.isPresent()) {
      return trouble(
          BAD_REQUEST, "year", "year-missing", years(variant.get()), variant.get().designation());
    }
    return question.year() == null
        ? trouble(BAD_REQUEST, "serial", "nothing", List.of())
        : trouble(BAD_REQUEST, "variant", "variant-missing", List.of(), question.year());
  }

  private Trouble noBlock(Located.NoBlock noBlock) {
    List<Trouble.Way> near = new ArrayList<>();
    for (SerialMatch match : noBlock.matches()) {
      add(near, "expected.trouble.below", match.below());
      add(near, "expected.trouble.above", match.above());
    }
    String serials =
        noBlock.matches().stream()
            .map(SerialMatch::text)
            .distinct()
            .collect(Collectors.joining(", "));
    return trouble(UNPROCESSABLE, "serial", "no-block", near, serials);
  }

  private void add(List<Trouble.Way> all, String key, @Nullable SerialBlock block) {
    if (block != null) {
      all.add(new Trouble.Way(phrases.of(key, inWords(block)), href(block)));
    }
  }

  private String href(SerialBlock block) {
    return block.year() == null
        ? links.variant(block.variant())
        : ways.to(block.variant(), block.year(), null);
  }

  private Trouble contradiction(Located.Contradiction contradiction) {
    String serial = contradiction.text().strip();
    List<Trouble.Way> meant =
        contradiction.blocks().stream()
            .map(b -> new Trouble.Way(inWords(b), ways.to(b.variant(), b.year(), serial)))
            .toList();
    String blocks =
        contradiction.blocks().stream()
            .map(this::inWords)
            .collect(Collectors.joining(phrases.of("expected.and")));
    return trouble(UNPROCESSABLE, "serial", "contradicts", meant, serial, blocks);
  }

  private List<Trouble.Way> years(Variant variant) {
    return IntStream.of(catalogue.model(variant.key()).orElseThrow().years())
        .mapToObj(y -> new Trouble.Way("" + y, ways.to(variant.key(), y, null)))
        .toList();
  }

  private Trouble.Way way(Position position) {
    return new Trouble.Way(
        plate.heading(position),
        ways.to(position.variant().key(), position.year(), position.serialText()));
  }

  /** A block with what it was allotted to. */
  String inWords(SerialBlock block) {
    String designation =
        catalogue.variant(block.variant()).map(Variant::designation).orElse(block.variant());
    String what =
        block.year() == null
            ? designation
            : phrases.of("expected.variant-year", designation, block.year());
    return phrases.of("expected.block.of", plate.serials(block), what);
  }

  private String runs(List<ProductionRun> runs) {
    return runs.stream()
        .map(r -> wording.years(r.firstYear(), r.lastYear()))
        .collect(Collectors.joining(phrases.of("expected.and")));
  }

  static String shortened(String text) {
    return text.length() <= ECHO ? text : text.substring(0, ECHO) + "…";
  }

  private Trouble trouble(
      int status, String field, String code, List<Trouble.Way> ways, Object... arguments) {
    String key = "expected.trouble." + code;
    return new Trouble(
        status, field, phrases.of(key, arguments), phrases.of(key + ".advice", arguments), ways);
  }
}
