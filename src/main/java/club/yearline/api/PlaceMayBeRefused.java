package club.yearline.api;

import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.http.MediaType;

/** Describes a call whose question may be understood and still have no one answer. */
@ApiResponse(responseCode = "200", description = "OK", useReturnTypeSchema = true)
@ApiResponse(
    responseCode = "422",
    description =
        "Understood, but outside production, ambiguous or in conflict; `candidates` or `runs` say"
            + " what may be meant.",
    content =
        @Content(
            mediaType = MediaType.APPLICATION_PROBLEM_JSON_VALUE,
            schema = @Schema(implementation = UnansweredView.class)))
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@interface PlaceMayBeRefused {}
