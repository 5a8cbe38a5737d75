package club.yearline.news;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.util.DigestUtils;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.context.request.ServletWebRequest;

/** The feeds of revisions. */
@Controller
class FeedController {

  private static final MediaType ATOM =
      MediaType.parseMediaType("application/atom+xml;charset=UTF-8");

  private final Feeds feeds;
  private final FeedWriter writer;
  private final PublicAddress address;

  FeedController(Feeds feeds, FeedWriter writer, PublicAddress address) {
    this.feeds = feeds;
    this.writer = writer;
    this.address = address;
  }

  @GetMapping("/feed")
  @Nullable ResponseEntity<byte[]> whole(
      @RequestParam(required = false) @Nullable Integer before,
      HttpServletRequest request,
      HttpServletResponse response) {
    return answer(feeds.whole(address.of(request), before), request, response);
  }

  @GetMapping("/feed/families/{key}")
  @Nullable ResponseEntity<byte[]> family(
      @PathVariable String key,
      @RequestParam(required = false) @Nullable Integer before,
      HttpServletRequest request,
      HttpServletResponse response) {
    return answer(feeds.family(key, address.of(request), before), request, response);
  }

  /**
   * The tag is made from the whole document, because names of people change without a revision; it
   * is a weak one, so that the container may compress.
   */
  private @Nullable ResponseEntity<byte[]> answer(
      FeedPart part, HttpServletRequest request, HttpServletResponse response) {
    byte[] document = writer.write(part);
    CacheControl fresh =
        request.getUserPrincipal() == null
            ? CacheControl.noCache()
            : CacheControl.noCache().cachePrivate();
    String tag = "W/\"" + DigestUtils.md5DigestAsHex(document) + "\"";
    response.setHeader("Cache-Control", fresh.getHeaderValue());
    if (new ServletWebRequest(request, response).checkNotModified(tag, changed(part))) {
      return null;
    }
    return ResponseEntity.ok().contentType(ATOM).body(document);
  }

  /** In whole seconds, as the header has it; unknown where nothing is published. */
  private static long changed(FeedPart part) {
    Instant updated = part.updated();
    return updated.equals(Instant.EPOCH) ? -1 : updated.getEpochSecond() * 1000;
  }
}
