package club.yearline.api;

import club.yearline.catalog.FindingsOf;
import club.yearline.catalog.ImpactOf;
import club.yearline.catalog.Reading;
import club.yearline.catalog.RevisionIn;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Difference;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Question;
import club.yearline.effectivity.Timeline;
import club.yearline.effectivity.Variant;
import club.yearline.effectivity.VariantModel;
import club.yearline.web.Refusal;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The computed answers of the catalogue. */
@RestController
@RequestMapping(path = "/api/v1", produces = MediaType.APPLICATION_JSON_VALUE)
@Tag(name = "Answers")
class AnswerApi {

  private final MessageSource messages;
  private final FindingsOf findings;
  private final ImpactOf impacts;

  AnswerApi(MessageSource messages, FindingsOf findings, ImpactOf impacts) {
    this.messages = messages;
    this.findings = findings;
    this.impacts = impacts;
  }

  @Operation(
      summary = "What an airframe of a serial, or of a variant and year, left the factory with",
      description =
          "Give a serial, or a variant and a year, or all three to have one checked against the"
              + " other.")
  @PlaceMayBeRefused
  // Where "not required" stands outright, Spring need not look for @Nullable at every call.
  @GetMapping("/expected")
  AnswerViews.Expected expected(
      @Parameter(description = "Key of the variant.", example = "la-2b")
          @RequestParam(required = false)
          @Nullable String variant,
      @Parameter(description = "Model year or year of manufacture.", example = "1966")
          @RequestParam(required = false)
          @Nullable Integer year,
      @Parameter(
              description =
                  "Serial as stamped; dashes, spaces, case and leading zeros do not matter.",
              example = "LT-0412")
          @RequestParam(required = false)
          @Nullable String serial,
      @Parameter(description = "Whether to tell what differs in the produced years beside it.")
          @RequestParam(defaultValue = "false")
          boolean neighbours,
      Reading reading,
      Locale locale) {
    Catalogue catalogue = reading.catalogue();
    Located.Found found =
        Places.find(catalogue, new Question(blankToNull(variant), year, blankToNull(serial)));
    Position position = found.position();
    return new AnswerViews.Expected(
        reading.revision(),
        PositionView.of(position),
        EntryViews.BlockView.ofNullable(found.block()),
        AnswerView.all(catalogue, catalogue.expected(position), position),
        neighbours ? neighbour(catalogue, position, false) : null,
        neighbours ? neighbour(catalogue, position, true) : null,
        caution(locale));
  }

  /** What was different in the nearest produced year before or after. */
  private static AnswerViews.@Nullable Neighbour neighbour(
      Catalogue catalogue, Position position, boolean after) {
    Integer year = position.year();
    if (year == null) {
      return null;
    }
    VariantModel model = catalogue.model(position.variant().key()).orElseThrow();
    OptionalInt other = after ? model.yearAfter(year) : model.yearBefore(year);
    if (other.isEmpty()) {
      return null;
    }
    Position there = Position.of(position.variant(), other.getAsInt());
    List<Difference> pairs = Difference.pair(model.expected(position), model.expected(there));
    return new AnswerViews.Neighbour(
        other.getAsInt(), AnswerViews.differing(catalogue, pairs, position, there));
  }

  @Operation(summary = "One feature along the production of each variant that has it")
  @GetMapping("/timeline")
  AnswerViews.TimelineView timeline(
      @Parameter(description = "Key of the feature.", example = "door-latch") @RequestParam
          String feature,
      @Parameter(description = "Key of a family, to leave all others aside.", example = "turnstone")
          @RequestParam
          @Nullable String family,
      Reading reading) {
    Catalogue catalogue = reading.catalogue();
    Feature of =
        catalogue
            .feature(feature)
            .orElseThrow(() -> Refusal.notFound("unknown-feature", feature).at("feature"));
    String wanted = blankToNull(family);
    if (wanted != null && catalogue.family(wanted).isEmpty()) {
      throw Refusal.notFound("unknown-family", wanted).at("family");
    }
    return new AnswerViews.TimelineView(
        reading.revision(),
        of.key(),
        of.name(),
        timelines(catalogue, of, wanted).map(AnswerViews.VariantTimeline::of).toList());
  }

  private static Stream<Timeline> timelines(
      Catalogue catalogue, Feature feature, @Nullable String family) {
    return catalogue.records().families().stream()
        .filter(f -> family == null || family.equals(f.key()))
        .flatMap(f -> catalogue.variantsOf(f.key()).stream())
        .map(Variant::key)
        .map(catalogue::model)
        .flatMap(Optional::stream)
        .flatMap(m -> m.timeline(feature.key()).stream());
  }

  @Operation(summary = "The features whose answer differs between two variant-years")
  @PlaceMayBeRefused
  @GetMapping("/differences")
  AnswerViews.Differences differences(
      @Parameter(description = "Variant and year, with a colon between.", example = "la-2b:1966")
          @RequestParam
          String from,
      @Parameter(description = "The same for the other side.", example = "la-2b:1968") @RequestParam
          String to,
      Reading reading,
      Locale locale) {
    Catalogue catalogue = reading.catalogue();
    Position first = Places.variantYear(catalogue, "from", from).position();
    Position second = Places.variantYear(catalogue, "to", to).position();
    List<Difference> pairs = Difference.pair(catalogue.expected(first), catalogue.expected(second));
    return new AnswerViews.Differences(
        reading.revision(),
        PositionView.of(first),
        PositionView.of(second),
        AnswerViews.differing(catalogue, pairs, first, second),
        (int) pairs.stream().filter(p -> !p.differs()).count(),
        caution(locale));
  }

  @Operation(summary = "Every answer that differs between two revisions")
  @GetMapping("/impact")
  AnswerViews.ImpactView impact(@RevisionIn("from") Reading from, @RevisionIn("to") Reading to) {
    Catalogue before = from.catalogue();
    Catalogue after = to.catalogue();
    return new AnswerViews.ImpactView(
        from.revision(),
        to.revision(),
        impacts.between(before, after).stream()
            .map(row -> AnswerViews.Row.of(row, before, after))
            .toList());
  }

  @Operation(summary = "What is doubtful about the catalogue’s records")
  @GetMapping("/findings")
  AnswerViews.FindingsView findings(Reading reading) {
    return new AnswerViews.FindingsView(
        reading.revision(),
        findings.all(reading.catalogue()).stream().map(AnswerViews.FindingView::of).toList());
  }

  private String caution(Locale locale) {
    return messages.getMessage("caution.text", null, locale);
  }

  private static @Nullable String blankToNull(@Nullable String text) {
    return text == null || text.isBlank() ? null : text.strip();
  }
}
