package club.yearline.api;

import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.http.MediaType;

/** Describes a call whose body may be understood and still name what does not exist. */
@ApiResponse(responseCode = "200", description = "OK", useReturnTypeSchema = true)
@ApiResponse(
    responseCode = "422",
    description =
        "Understood, but some of it does not exist in the catalogue, or contradicts the rest;"
            + " `errors` names the members, such as `observations[2].value`.",
    content =
        @Content(
            mediaType = MediaType.APPLICATION_PROBLEM_JSON_VALUE,
            schema = @Schema(implementation = ProblemView.class)))
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@interface BodyMayBeRefused {}
