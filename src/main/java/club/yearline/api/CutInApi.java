package club.yearline.api;

import club.yearline.catalog.Reading;
import club.yearline.estimation.Estimate;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.parameters.RequestBody;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import org.springframework.context.MessageSource;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Where a change cut in, by airframes that a program knows of. */
@RestController
@RequestMapping(path = "/api/v1", produces = MediaType.APPLICATION_JSON_VALUE)
@Tag(name = "Answers")
class CutInApi {

  private static final String EXAMPLE =
      """
      { "change": "door-latch-rotary", "variant": "la-2b",
        "observations": [ { "serial": "LT-0398", "value": "old" },
                          { "serial": "LT-0455", "value": "new" } ] }""";

  private final MessageSource messages;

  CutInApi(MessageSource messages) {
    this.messages = messages;
  }

  @Operation(
      summary = "Where a change cut in, learnt from observed airframes",
      description =
          "Weighs a cut-in at one serial against a transition between two, each as likely"
              + " beforehand, by at most "
              + CutInAsked.MOST
              + " observations. An airframe counts once, by the last observation given for its"
              + " serial; a value that was offered both before and after the change, or neither,"
              + " does not count. Nothing is stored.",
      requestBody =
          @RequestBody(
              required = true,
              content =
                  @Content(
                      mediaType = MediaType.APPLICATION_JSON_VALUE,
                      schema = @Schema(implementation = CutInAsked.class),
                      examples = @ExampleObject(EXAMPLE))))
  @BodyMayBeRefused
  @PostMapping(path = "/cut-in", consumes = MediaType.APPLICATION_JSON_VALUE)
  CutInView cutIn(InputStream body, Reading reading, Locale locale) throws IOException {
    CutInCase question = CutInCase.of(CutInAsked.read(Body.read(body)), reading.catalogue());
    Estimate estimate = Estimate.of(question.bounds(), question.gathered().counted());
    return CutInView.of(
        reading.revision(), question, estimate, messages.getMessage("caution.text", null, locale));
  }
}
