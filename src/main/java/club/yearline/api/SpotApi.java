package club.yearline.api;

import club.yearline.api.SpotViews.SpotQuestion;
import club.yearline.api.SpotViews.Spotted;
import club.yearline.catalog.Reading;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Visibility;
import club.yearline.spotting.Considered;
import club.yearline.spotting.Ranking;
import club.yearline.spotting.Spotting;
import club.yearline.spotting.Told;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.parameters.RequestBody;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** What an airframe may be, by what was seen on it. */
@RestController
@RequestMapping(path = "/api/v1", produces = MediaType.APPLICATION_JSON_VALUE)
@Tag(name = "Answers")
class SpotApi {

  private static final int USUAL_LIMIT = 1000;
  private static final int HIGHEST_LIMIT = 10_000;

  private final MessageSource messages;

  SpotApi(MessageSource messages) {
    this.messages = messages;
  }

  @Operation(
      summary = "What an airframe may be, by what was seen on it",
      description =
          "Ranks the variants and years of a family, or of all, by what was seen, and tells what to"
              + " look at next.",
      requestBody =
          @RequestBody(
              required = true,
              content =
                  @Content(
                      mediaType = MediaType.APPLICATION_JSON_VALUE,
                      schema = @Schema(implementation = SpotQuestion.class),
                      examples =
                          @ExampleObject(
                              """
                              {"family": "turnstone", "visibility": "close", "observations": [
                                {"feature": "landing-light", "value": "nose-bowl"}]}"""))))
  @BodyMayBeRefused
  @PostMapping(path = "/spot", consumes = MediaType.APPLICATION_JSON_VALUE)
  Spotted spot(InputStream body, Reading reading, Locale locale) throws IOException {
    SpotQuestion question = SpotQuestion.read(Body.read(body));
    Catalogue catalogue = reading.catalogue();
    Body.Faults faults = new Body.Faults();
    Told told = Observations.told(catalogue, question.pairings(), faults);
    Observations.checkFeatures(catalogue, question.skipped(), "skip", faults);
    Visibility standing = standing(question, faults);
    if (question.family() != null && catalogue.family(question.family()).isEmpty()) {
      faults.add("family", "refusal.unknown-family");
    }
    int limit = question.limit() == null ? USUAL_LIMIT : question.limit();
    if (limit < 1 || limit > HIGHEST_LIMIT) {
      faults.add("limit", "field.between", 1, HIGHEST_LIMIT);
    }
    faults.refuse(HttpStatus.UNPROCESSABLE_CONTENT);
    Ranking ranking = considered(catalogue, question).rank(told.seen());
    return Spotted.of(
        reading.revision(),
        ranking,
        limit,
        ranking.next(standing, question.skipped()),
        messages.getMessage("caution.text", null, locale));
  }

  private static Considered considered(Catalogue catalogue, SpotQuestion question) {
    return question.family() == null
        ? Spotting.ofAll(catalogue)
        : Spotting.of(catalogue, question.family()).orElseThrow();
  }

  /** Where nobody says where they stand, everything can be seen. */
  private static Visibility standing(SpotQuestion question, Body.Faults faults) {
    String code = question.visibility();
    if (code == null) {
      return Visibility.PAPERS;
    }
    List<Visibility> all = Arrays.asList(Visibility.values());
    return all.stream()
        .filter(v -> v.code().equals(code))
        .findFirst()
        .orElseGet(
            () -> {
              String known = all.stream().map(Visibility::code).collect(Collectors.joining(", "));
              faults.add("visibility", "field.unknown", known);
              return Visibility.PAPERS;
            });
  }
}
