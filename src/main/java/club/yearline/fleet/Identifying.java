package club.yearline.fleet;

import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Question;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.SerialMatch;
import club.yearline.effectivity.SerialText;
import club.yearline.effectivity.Variant;
import club.yearline.web.Choice;
import club.yearline.web.Phrases;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Reads serial, variant and year of an airframe, by the engine, and says why not. */
record Identifying(Catalogue catalogue, Wording wording, Phrases phrases) {

  private static final int MOST_YEAR_DIGITS = 4;

  /** How much of a typed text is repeated. */
  private static final int ECHO = 60;

  Identified of(AirframeForm form) {
    String year = clean(form.year());
    if (year != null
        && (year.length() > MOST_YEAR_DIGITS
            || !year.chars().allMatch(c -> c >= '0' && c <= '9'))) {
      return fault("year", "year");
    }
    Question question =
        new Question(
            variantKey(clean(form.variant())),
            year == null ? null : Integer.valueOf(year),
            clean(form.serial()));
    Located located = catalogue.locate(question);
    if (located instanceof Located.Found found) {
      return Identified.as(found.position());
    }
    if (located instanceof Located.Ambiguous several) {
      return several(several, form.meant());
    }
    return located instanceof Located.Incomplete ? incomplete(question) : unclear(located);
  }

  /** A variant may be given by its designation, where only one has it. */
  private @Nullable String variantKey(@Nullable String typed) {
    if (typed == null || catalogue.variant(typed).isPresent()) {
      return typed;
    }
    List<Variant> named =
        catalogue.records().variants().stream()
            .filter(v -> v.designation().equalsIgnoreCase(typed))
            .toList();
    return named.size() == 1 ? named.get(0).key() : typed;
  }

  private Identified several(Located.Ambiguous several, @Nullable String meant) {
    return several.candidates().stream()
        .filter(p -> AirframeForm.code(p).equals(meant))
        .findFirst()
        .map(Identified::as)
        .orElseGet(
            () ->
                new Identified(
                    null,
                    Map.of("serial", phrases.of("fleet.trouble.several", shown(several.text()))),
                    phrases.of("fleet.trouble.several.advice"),
                    several.candidates().stream().map(this::choice).toList()));
  }

  private Choice choice(Position position) {
    String what = variantYear(position.variant().key(), position.year());
    String serial = Objects.requireNonNullElse(position.serialText(), "");
    String family = catalogue.family(position.variant().family()).map(f -> f.name()).orElse("");
    return new Choice(
        AirframeForm.code(position), phrases.of("fleet.choice", serial, what, family));
  }

  private Identified incomplete(Question question) {
    if (question.variant() != null) {
      return fault("year", "year-missing");
    }
    return question.year() == null
        ? fault("serial", "nothing")
        : fault("variant", "variant-missing");
  }

  private Identified unclear(Located located) {
    if (located instanceof Located.TooLong tooLong) {
      return fault("serial", "too-long", tooLong.length(), SerialText.MAX_LENGTH);
    }
    if (located instanceof Located.UnknownVariant unknown) {
      return fault("variant", "no-variant", shown(unknown.key()));
    }
    if (located instanceof Located.OutsideProduction outside) {
      String runs =
          outside.runs().stream()
              .map(r -> wording.years(r.firstYear(), r.lastYear()))
              .collect(Collectors.joining(phrases.of("fleet.and")));
      return fault("year", "outside", outside.variant().designation(), outside.year(), runs);
    }
    if (located instanceof Located.NoSeries none) {
      Variant variant = none.variant();
      return variant == null
          ? fault("serial", "no-series", shown(none.text()))
          : fault("serial", "other-series", shown(none.text()), variant.designation());
    }
    if (located instanceof Located.NoBlock noBlock) {
      return fault("serial", "no-block", shown(noBlock.text()), nearest(noBlock));
    }
    if (located instanceof Located.Contradiction against) {
      return fault("serial", "contradicts", shown(against.text()), inWords(against.blocks()));
    }
    throw new IllegalArgumentException("Not unclear: " + located);
  }

  private String nearest(Located.NoBlock noBlock) {
    return inWords(
        noBlock.matches().stream()
            .flatMap((SerialMatch m) -> Stream.of(m.below(), m.above()))
            .filter(Objects::nonNull)
            .toList());
  }

  private String inWords(List<@Nullable SerialBlock> blocks) {
    return blocks.stream()
        .filter(Objects::nonNull)
        .map(this::inWords)
        .distinct()
        .collect(Collectors.joining(phrases.of("fleet.and")));
  }

  private String inWords(SerialBlock block) {
    String first = stamped(block, block.firstSerial());
    String serials =
        block.lastSerial() == null
            ? phrases.of("fleet.and-on", first)
            : wording.range(first, stamped(block, block.lastSerial()));
    return phrases.of("fleet.block", serials, variantYear(block.variant(), block.year()));
  }

  private String stamped(SerialBlock block, String serial) {
    return catalogue
        .series(block.series())
        .flatMap(s -> s.read(serial).map(s::show))
        .orElse(serial);
  }

  private String variantYear(String variant, @Nullable Integer year) {
    String designation = new Headings(catalogue, phrases).designation(variant);
    return year == null ? designation : phrases.of("fleet.variant-year", designation, year);
  }

  private Identified fault(String field, String code, Object... arguments) {
    String key = "fleet.trouble." + code;
    return new Identified(
        null,
        Map.of(field, phrases.of(key, arguments)),
        phrases.of(key + ".advice", arguments),
        List.of());
  }

  private static String shown(String typed) {
    String text = typed.strip();
    return text.length() <= ECHO ? text : text.substring(0, ECHO) + "…";
  }

  private static @Nullable String clean(@Nullable String text) {
    return text == null || text.isBlank() ? null : text.strip();
  }
}
