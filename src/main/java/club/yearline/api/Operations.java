package club.yearline.api;

import club.yearline.catalog.Reading;
import club.yearline.catalog.RevisionIn;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.headers.Header;
import io.swagger.v3.oas.models.media.IntegerSchema;
import io.swagger.v3.oas.models.media.StringSchema;
import io.swagger.v3.oas.models.parameters.Parameter;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.responses.ApiResponses;
import java.math.BigDecimal;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springdoc.core.customizers.OperationCustomizer;
import org.springframework.core.MethodParameter;
import org.springframework.stereotype.Component;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.method.HandlerMethod;

/** Describes what all calls have in common: revisions, caching, and the problems of any of them. */
@Component
class Operations implements OperationCustomizer {

  @Override
  public Operation customize(Operation operation, HandlerMethod method) {
    Stream.of(method.getMethodParameters())
        .filter(p -> p.getParameterType() == Reading.class)
        .map(Operations::revision)
        .forEach(operation::addParametersItem);
    ApiResponses responses = operation.getResponses();
    if (method.hasMethodAnnotation(PostMapping.class)) {
      responses.addApiResponse("413", new ApiResponse().$ref("TooLarge"));
      responses.addApiResponse("415", new ApiResponse().$ref("OtherContent"));
    } else {
      sparing(operation);
    }
    responses.addApiResponse("400", new ApiResponse().$ref("NotUnderstood"));
    responses.addApiResponse("401", new ApiResponse().$ref("Closed"));
    responses.addApiResponse("404", new ApiResponse().$ref("Unknown"));
    responses.addApiResponse("406", new ApiResponse().$ref("NotAcceptable"));
    return operation;
  }

  /** What is asked by its address alone may be kept, and asked for again. */
  private static void sparing(Operation operation) {
    operation.addParametersItem(
        new Parameter()
            .in("header")
            .name("If-None-Match")
            .description("The `ETag` of an answer already at hand.")
            .schema(new StringSchema()));
    ApiResponses responses = operation.getResponses();
    ApiResponse answer = Objects.requireNonNull(responses.get("200"));
    answer.addHeaderObject("ETag", new Header().$ref("ETag"));
    answer.addHeaderObject("Cache-Control", new Header().$ref("Cache-Control"));
    responses.addApiResponse("304", new ApiResponse().$ref("NotModified"));
  }

  private static Parameter revision(MethodParameter parameter) {
    RevisionIn named = parameter.getParameterAnnotation(RevisionIn.class);
    return new Parameter()
        .in("query")
        .name(named == null ? "rev" : named.value())
        .required(named != null)
        .description(describe(named))
        .schema(new IntegerSchema().minimum(BigDecimal.ZERO))
        .example(named == null ? null : 1);
  }

  private static String describe(@Nullable RevisionIn named) {
    return named == null
        ? "Revision of the catalogue to answer from; the newest where it is not given."
        : "A revision of the catalogue; 0 is the state before anything was published.";
  }
}
