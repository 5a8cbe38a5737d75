package club.yearline.api;

import club.yearline.api.InspectViews.InspectQuestion;
import club.yearline.api.InspectViews.Inspected;
import club.yearline.catalog.Reading;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Question;
import club.yearline.inspection.FindingWords;
import club.yearline.inspection.Inspector;
import club.yearline.spotting.Told;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.parameters.RequestBody;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Whether an airframe matches what its papers claim. */
@RestController
@RequestMapping(path = "/api/v1", produces = MediaType.APPLICATION_JSON_VALUE)
@Tag(name = "Answers")
class InspectApi {

  private final MessageSource messages;
  private final FindingWords words;

  InspectApi(MessageSource messages, FindingWords words) {
    this.messages = messages;
    this.words = words;
  }

  @Operation(
      summary = "Whether what was seen on an airframe matches what it is said to be",
      description =
          "Holds observations against the serial, or the variant and year, that an airframe is said"
              + " to be of. Give a serial, or a variant and a year, or all three.",
      requestBody =
          @RequestBody(
              required = true,
              content =
                  @Content(
                      mediaType = MediaType.APPLICATION_JSON_VALUE,
                      schema = @Schema(implementation = InspectQuestion.class),
                      examples =
                          @ExampleObject(
                              """
                              {"variant": "la-2b", "year": 1966, "observations": [
                                {"feature": "rear-window", "value": "wraparound"}]}"""))))
  @PlaceMayBeRefused
  @PostMapping(path = "/inspect", consumes = MediaType.APPLICATION_JSON_VALUE)
  Inspected inspect(InputStream body, Reading reading, Locale locale) throws IOException {
    Body asked = Body.read(body);
    List<Told.Pairing> pairings = InspectQuestion.observations(asked);
    Question question =
        new Question(
            clean(asked.text("variant")), asked.whole("year"), clean(asked.text("serial")));
    asked.refuseFaults();
    Catalogue catalogue = reading.catalogue();
    Body.Faults faults = new Body.Faults();
    Told told = Observations.told(catalogue, pairings, faults);
    Position claim = Places.find(catalogue, question).position();
    faults.refuse(HttpStatus.UNPROCESSABLE_CONTENT);
    return Inspected.of(
        reading.revision(),
        catalogue,
        Inspector.inspect(catalogue, claim, told.seen()),
        words,
        messages.getMessage("caution.text", null, locale));
  }

  private static @Nullable String clean(@Nullable String text) {
    return text == null || text.isBlank() ? null : text.strip();
  }
}
