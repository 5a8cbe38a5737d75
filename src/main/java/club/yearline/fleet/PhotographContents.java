package club.yearline.fleet;

import club.yearline.accounts.Actor;
import club.yearline.uploads.EvidenceDesk;
import club.yearline.uploads.NotTaken;
import club.yearline.web.Refusal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.http.ResponseEntity.BodyBuilder;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/**
 * Photographs, for those who may see the airframe. Nothing in them can run or load anything, and
 * nobody but the reader's own browser keeps them.
 */
@Controller
class PhotographContents {

  private static final String NOTHING_RUNS = "default-src 'none'; sandbox";

  private final Keeping keeping;
  private final Photographs photographs;
  private final EvidenceDesk desk;

  PhotographContents(Keeping keeping, Photographs photographs, EvidenceDesk desk) {
    this.keeping = keeping;
    this.photographs = photographs;
    this.desk = desk;
  }

  @GetMapping("/fleet/{id}/photographs/{photograph}")
  ResponseEntity<byte[]> content(
      @PathVariable long id, @PathVariable long photograph, Actor actor) {
    Photograph found = visible(actor, id, photograph);
    ContentDisposition shown =
        ContentDisposition.inline().filename(found.name(), StandardCharsets.UTF_8).build();
    return guarded(found.sha256())
        .contentType(MediaType.parseMediaType(found.mediaType()))
        .header(HttpHeaders.CONTENT_DISPOSITION, shown.toString())
        .body(found.bytes());
  }

  @GetMapping("/fleet/{id}/photographs/{photograph}/small")
  ResponseEntity<byte[]> small(@PathVariable long id, @PathVariable long photograph, Actor actor)
      throws IOException {
    Photograph found = visible(actor, id, photograph);
    try {
      byte[] small = desk.thumbnail(found.sha256(), found.bytes());
      return guarded(found.sha256() + "-small").contentType(MediaType.IMAGE_JPEG).body(small);
    } catch (NotTaken busy) {
      throw Refusal.of(HttpStatus.SERVICE_UNAVAILABLE, "files-busy");
    }
  }

  private Photograph visible(Actor actor, long id, long photograph) {
    keeping.visible(actor, id);
    return photographs
        .ofAirframe(photograph, id)
        .orElseThrow(() -> Refusal.notFound("unknown-photograph", photograph, id));
  }

  /** The browser asks each time whether it may still show it. */
  private static BodyBuilder guarded(String tag) {
    return ResponseEntity.ok()
        .cacheControl(CacheControl.noCache().cachePrivate())
        .eTag('"' + tag + '"')
        .header("Content-Security-Policy", NOTHING_RUNS)
        .header("X-Content-Type-Options", "nosniff")
        .header("Cross-Origin-Resource-Policy", "same-origin");
  }
}
