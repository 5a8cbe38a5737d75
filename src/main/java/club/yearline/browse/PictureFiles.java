package club.yearline.browse;

import club.yearline.catalog.Pictures;
import club.yearline.catalog.StoredPicture;
import club.yearline.web.Refusal;
import java.time.Duration;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** Pictures by content: what an address shows never changes, and nothing in it can run. */
@Controller
class PictureFiles {

  private static final String NOTHING_RUNS =
      "default-src 'none'; style-src 'unsafe-inline'; sandbox";

  private final Pictures pictures;

  PictureFiles(Pictures pictures) {
    this.pictures = pictures;
  }

  @GetMapping("/pictures/{sha256:[0-9a-f]{64}}/{name}")
  ResponseEntity<byte[]> picture(@PathVariable String sha256, @PathVariable String name) {
    StoredPicture picture =
        pictures.find(sha256).orElseThrow(() -> Refusal.notFound("unknown-picture", name));
    return ResponseEntity.ok()
        .contentType(MediaType.parseMediaType(picture.mediaType()))
        .cacheControl(CacheControl.maxAge(Duration.ofDays(365)).cachePublic().immutable())
        .eTag('"' + sha256 + '"')
        .header("Content-Security-Policy", NOTHING_RUNS)
        .header("X-Content-Type-Options", "nosniff")
        .body(picture.bytes());
  }
}
