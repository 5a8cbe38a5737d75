package club.yearline.exchange;

import club.yearline.catalog.Reading;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Duration;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.context.request.WebRequest;

/** The catalogue as a package to take away. */
@RestController
@Tag(name = "Entries")
class PackageController {

  private static final Duration FOR_EVER = Duration.ofDays(365);

  private final Exporting exporting;

  PackageController(Exporting exporting) {
    this.exporting = exporting;
  }

  /** The data package of a revision, or of the newest, written as it is made. */
  @Operation(summary = "The catalogue as a data package, zipped")
  @ApiResponse(
      responseCode = "200",
      description = "A zip file",
      content =
          @Content(
              mediaType = "application/zip",
              schema = @Schema(type = "string", format = "binary")))
  @GetMapping(path = "/api/v1/package", produces = "application/zip")
  void download(Reading reading, WebRequest request, HttpServletResponse response)
      throws IOException {
    CacheControl cache =
        reading.fixed()
            ? CacheControl.maxAge(FOR_EVER).cachePrivate().immutable()
            : CacheControl.noCache();
    response.setHeader(HttpHeaders.CACHE_CONTROL, cache.getHeaderValue());
    if (request.checkNotModified("\"package-" + reading.revision() + "\"")) {
      return;
    }
    response.setContentType("application/zip");
    response.setHeader(HttpHeaders.CONTENT_DISPOSITION, attachment(reading.revision()));
    try (PackageTarget target = new ZipTarget(response.getOutputStream())) {
      exporting.write(reading.snapshot(), target);
    }
  }

  private static String attachment(int revision) {
    return ContentDisposition.attachment()
        .filename("catalogue-r" + revision + ".zip")
        .build()
        .toString();
  }
}
