package club.yearline.api;

import club.yearline.catalog.Reading;
import io.swagger.v3.core.converter.ModelConverters;
import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.headers.Header;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.media.StringSchema;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.servers.Server;
import org.springdoc.core.customizers.OpenApiCustomizer;
import org.springdoc.core.utils.SpringDocUtils;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the description of the API says about the whole of it. */
@Configuration(proxyBeanMethods = false)
class Description {

  static {
    // Readings come from a parameter that the operations describe themselves.
    SpringDocUtils.getConfig().addRequestWrapperToIgnore(Reading.class);
  }

  private static final String ABOUT =
      """
      Reads a catalogue of what changed on an aircraft family from year to year, and where in \
      production each change cut in.

      **Revisions.** The catalogue is published in revisions. Every answer names the one it was \
      read at; `rev` asks for an earlier one. An answer at a revision that the address names \
      never changes and may be kept for ever; one at the newest has an `ETag` to ask again with.

      **Problems.** Whatever is not answered is a problem (RFC 9457, `application/problem+json`) \
      that says what is wrong and what to do; `errors` names the parameters at fault. An address \
      that is asked with another method than those given here answers 405 and names them in \
      `Allow`. A parameter that is not given here, or is given twice, is refused; so is a member \
      of a body.

      **Members.** Members may be added to an answer, and are never renamed. What is not known is \
      left out, unless its type allows `null`.
      """;

  @Bean
  OpenAPI published() {
    return new OpenAPI()
        .info(new Info().title("Yearline").version("1").description(ABOUT))
        .addServersItem(new Server().url("/").description("This installation"))
        .components(components());
  }

  /** No call returns this type, so that nothing else would describe it. */
  @Bean
  OpenApiCustomizer problems() {
    return description ->
        ModelConverters.getInstance(true)
            .readAll(ProblemView.class)
            .forEach(description.getComponents()::addSchemas);
  }

  private static Components components() {
    return new Components()
        .addHeaders(
            "ETag",
            header("Changes when the answer may have changed; not there for who has signed in."))
        .addHeaders(
            "Cache-Control",
            header(
                "`immutable` for a year where the address names the revision; `no-cache`"
                    + " otherwise."))
        .addResponses(
            "NotModified", new ApiResponse().description("The answer at hand is still the answer."))
        .addResponses(
            "NotUnderstood",
            problem("A parameter, or a member of the body, is missing, unknown or unreadable."))
        .addResponses("TooLarge", problem("The body holds more than a question needs."))
        .addResponses("OtherContent", problem("The body is not `application/json`."))
        .addResponses("Closed", problem("The club has closed its catalogue to visitors."))
        .addResponses("Unknown", problem("What is asked for does not exist at this revision."))
        .addResponses(
            "NotAcceptable", problem("The answer cannot be given in a form that is accepted."));
  }

  private static Header header(String description) {
    return new Header().description(description).schema(new StringSchema());
  }

  private static ApiResponse problem(String description) {
    MediaType body = new MediaType().schema(new Schema<>().$ref("Problem"));
    return new ApiResponse()
        .description(description)
        .content(
            new Content()
                .addMediaType(
                    org.springframework.http.MediaType.APPLICATION_PROBLEM_JSON_VALUE, body));
  }
}
