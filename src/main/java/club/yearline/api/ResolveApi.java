package club.yearline.api;

import club.yearline.catalog.Finder;
import club.yearline.catalog.Found;
import club.yearline.catalog.Meaning;
import club.yearline.catalog.Reading;
import club.yearline.effectivity.SerialBlock;
import club.yearline.web.Refusal;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Says what a typed text may mean. */
@RestController
@RequestMapping(path = "/api/v1", produces = MediaType.APPLICATION_JSON_VALUE)
@Tag(name = "Answers")
class ResolveApi {

  @Operation(summary = "What a typed text may mean: serials, variants and years, entries")
  @GetMapping("/resolve")
  Resolved resolve(
      @Parameter(
              description = "A serial, a designation with a year, a name, a year, or words.",
              example = "LA-2B 1966")
          @RequestParam
          String q,
      Reading reading) {
    if (q.strip().length() > Finder.MAX_LENGTH) {
      throw Refusal.notUnderstood("query-too-long", q.strip().length(), Finder.MAX_LENGTH)
          .at("q", "field.query-too-long", Finder.MAX_LENGTH);
    }
    Found found = Finder.of(reading.catalogue()).find(q);
    return new Resolved(
        reading.revision(),
        found.text(),
        found.hits().stream().map(Hit::of).toList(),
        found.unread(),
        found.more());
  }

  /**
   * What was found, best first.
   *
   * @param unread words that nothing in the catalogue resembles
   * @param more whether there is more than is listed
   */
  record Resolved(int revision, String q, List<Hit> matches, List<String> unread, boolean more) {}

  /**
   * One meaning.
   *
   * @param kind what kind of thing it is
   * @param guess whether it rests on a slip of the pen or on part of a word
   */
  record Hit(
      @Schema(
              allowableValues = {
                "serial",
                "variant-year",
                "variant",
                "family",
                "maker",
                "feature",
                "value",
                "retrofit",
                "source"
              })
          String kind,
      boolean guess,
      @Nullable String key,
      @Nullable String label,
      @Nullable String feature,
      @Nullable String variant,
      @Nullable Integer year,
      @Nullable String series,
      @Nullable String serial,
      EntryViews.@Nullable BlockView block,
      EntryViews.@Nullable BlockView below,
      EntryViews.@Nullable BlockView above) {

    static Hit of(Found.Hit hit) {
      boolean guess = hit.closeness().isGuess();
      Meaning meaning = hit.meaning();
      if (meaning instanceof Meaning.OfSerial serial) {
        return ofSerial(serial, guess);
      }
      if (meaning instanceof Meaning.OfYear of) {
        String label = of.variant().designation();
        return place("variant-year", guess, label, of.variant().key(), of.year());
      }
      if (meaning instanceof Meaning.OfVariant of) {
        return entry("variant", guess, of.variant().key(), of.variant().designation(), null);
      }
      if (meaning instanceof Meaning.OfFamily of) {
        return entry("family", guess, of.family().key(), of.family().name(), null);
      }
      if (meaning instanceof Meaning.OfMaker of) {
        return entry("maker", guess, null, of.maker(), null);
      }
      if (meaning instanceof Meaning.OfFeature of) {
        return entry("feature", guess, of.feature().key(), of.feature().name(), null);
      }
      if (meaning instanceof Meaning.OfValue of) {
        return entry("value", guess, of.value().key(), of.value().label(), of.feature().key());
      }
      if (meaning instanceof Meaning.OfRetrofit of) {
        String label = of.retrofit().document();
        return entry("retrofit", guess, of.retrofit().key(), label, of.retrofit().feature());
      }
      Meaning.OfSource of = (Meaning.OfSource) meaning;
      return entry("source", guess, of.source().key(), of.source().source().title(), null);
    }

    private static Hit entry(
        String kind, boolean guess, @Nullable String key, String label, @Nullable String feature) {
      return new Hit(kind, guess, key, label, feature, null, null, null, null, null, null, null);
    }

    private static Hit place(String kind, boolean guess, String label, String variant, int year) {
      return new Hit(kind, guess, null, label, null, variant, year, null, null, null, null, null);
    }

    private static Hit ofSerial(Meaning.OfSerial of, boolean guess) {
      SerialBlock block = of.block();
      return new Hit(
          "serial",
          guess,
          null,
          null,
          null,
          block == null ? null : block.variant(),
          block == null ? null : block.year(),
          of.match().series().key(),
          of.match().text(),
          EntryViews.BlockView.ofNullable(block),
          EntryViews.BlockView.ofNullable(of.match().below()),
          EntryViews.BlockView.ofNullable(of.match().above()));
    }
  }
}
