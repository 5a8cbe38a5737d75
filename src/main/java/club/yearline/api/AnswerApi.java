package club.yearline.api;

import club.yearline.catalog.FindingsOf;
import club.yearline.catalog.Reading;
import club.yearline.catalog.Snapshots;
import club.yearline.catalog.UnknownRevision;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Difference;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Impact;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Question;
import club.yearline.effectivity.Timeline;
import club.yearline.effectivity.Variant;
import club.yearline.effectivity.VariantModel;
import club.yearline.web.Refusal;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The computed answers of the catalogue. */
@RestController
@RequestMapping("/api/v1")
@Tag(name = "Answers")
class AnswerApi {

  private final MessageSource messages;
  private final Snapshots snapshots;
  private final FindingsOf findings;

  AnswerApi(MessageSource messages, Snapshots snapshots, FindingsOf findings) {
    this.messages = messages;
    this.findings = findings;
    this.snapshots = snapshots;
  }

  @Operation(
      summary = "What an airframe of a serial, or of a variant and year, left the factory with")
  @GetMapping("/expected")
  AnswerViews.Expected expected(
      @RequestParam @Nullable String variant,
      @RequestParam @Nullable Integer year,
      @RequestParam @Nullable String serial,
      @RequestParam(defaultValue = "false") boolean neighbours,
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
        AnswerView.all(catalogue.expected(position)),
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
    return AnswerViews.Neighbour.of(
        other.getAsInt(), Difference.pair(model.expected(position), model.expected(there)));
  }

  @Operation(summary = "One feature along the production of each variant that has it")
  @GetMapping("/timeline")
  AnswerViews.TimelineView timeline(
      @RequestParam String feature, @RequestParam @Nullable String family, Reading reading) {
    Catalogue catalogue = reading.catalogue();
    Feature of =
        catalogue.feature(feature).orElseThrow(() -> Refusal.notFound("unknown-feature", feature));
    String wanted = blankToNull(family);
    if (wanted != null && catalogue.family(wanted).isEmpty()) {
      throw Refusal.notFound("unknown-family", wanted);
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
  @GetMapping("/differences")
  AnswerViews.Differences differences(
      @RequestParam String from, @RequestParam String to, Reading reading, Locale locale) {
    Catalogue catalogue = reading.catalogue();
    Position first = Places.variantYear(catalogue, "from", from).position();
    Position second = Places.variantYear(catalogue, "to", to).position();
    List<Difference> pairs = Difference.pair(catalogue.expected(first), catalogue.expected(second));
    return new AnswerViews.Differences(
        reading.revision(),
        PositionView.of(first),
        PositionView.of(second),
        AnswerViews.differing(pairs),
        (int) pairs.stream().filter(p -> !p.differs()).count(),
        caution(locale));
  }

  @Operation(summary = "Every answer that differs between two revisions")
  @GetMapping("/impact")
  AnswerViews.ImpactView impact(@RequestParam int from, @RequestParam int to) {
    return new AnswerViews.ImpactView(
        from, to, Impact.between(at(from), at(to)).stream().map(AnswerViews.Row::of).toList());
  }

  private Catalogue at(int revision) {
    try {
      return snapshots.at(revision).catalogue();
    } catch (UnknownRevision e) {
      throw Refusal.notFound("unknown-revision", revision, e.highest());
    }
  }

  @Operation(summary = "What is doubtful about the catalogue's records")
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
