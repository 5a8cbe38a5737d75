package club.yearline.api;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the body of a problem holds (RFC 9457), for the description; the web module writes it.
 *
 * @param errors the parameters at fault, where some are
 */
@Schema(name = "Problem")
record ProblemView(
    @Schema(
            description =
                "Tells kinds of problems apart: the path of the page that explains this kind.",
            example = "/problems/unknown-revision")
        String type,
    String title,
    int status,
    @Schema(description = "What is wrong in this case.") String detail,
    @Schema(description = "What to do.") String advice,
    @Nullable List<Fault> errors) {

  /** A parameter at fault. */
  record Fault(String field, String message) {}
}
