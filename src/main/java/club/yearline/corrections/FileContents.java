package club.yearline.corrections;

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
 * The files of corrections, for those who may see these. Nothing in them can run or load anything;
 * only pictures are shown, all else is handed out to be saved.
 */
@Controller
class FileContents {

  /** Drawings carry their own colours as style. */
  private static final String NOTHING_RUNS =
      "default-src 'none'; style-src 'unsafe-inline'; sandbox";

  private final Attaching attaching;
  private final EvidenceDesk desk;

  FileContents(Attaching attaching, EvidenceDesk desk) {
    this.attaching = attaching;
    this.desk = desk;
  }

  @GetMapping("/corrections/{id}/files/{file}")
  ResponseEntity<byte[]> content(@PathVariable long id, @PathVariable long file, Actor actor) {
    CorrectionFile found = attaching.file(actor, id, file);
    ContentDisposition shown =
        (found.isPicture() ? ContentDisposition.inline() : ContentDisposition.attachment())
            .filename(found.name(), StandardCharsets.UTF_8)
            .build();
    return guarded(found.sha256())
        .contentType(MediaType.parseMediaType(found.mediaType()))
        .header(HttpHeaders.CONTENT_DISPOSITION, shown.toString())
        .body(found.bytes());
  }

  @GetMapping("/corrections/{id}/files/{file}/small")
  ResponseEntity<byte[]> small(@PathVariable long id, @PathVariable long file, Actor actor)
      throws IOException {
    CorrectionFile found = attaching.file(actor, id, file);
    if (!found.isPhotograph()) {
      throw Denials.unknownFile(file, id);
    }
    try {
      byte[] small = desk.thumbnail(found.sha256(), found.bytes());
      return guarded(found.sha256() + "-small").contentType(MediaType.IMAGE_JPEG).body(small);
    } catch (NotTaken busy) {
      throw Refusal.of(HttpStatus.SERVICE_UNAVAILABLE, "files-busy");
    }
  }

  /** Kept by the reader's own browser only, which asks each time whether it may still show it. */
  private static BodyBuilder guarded(String tag) {
    return ResponseEntity.ok()
        .cacheControl(CacheControl.noCache().cachePrivate())
        .eTag('"' + tag + '"')
        .header("Content-Security-Policy", NOTHING_RUNS)
        .header("X-Content-Type-Options", "nosniff")
        .header("Cross-Origin-Resource-Policy", "same-origin");
  }
}
