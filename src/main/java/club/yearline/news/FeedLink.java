package club.yearline.news;

import java.nio.charset.StandardCharsets;
import org.springframework.web.util.UriUtils;

/**
 * A feed as pages link to it.
 *
 * @param path its address within the application
 * @param label key of the link's text
 */
record FeedLink(String path, String label) {

  static final FeedLink WHOLE = new FeedLink("/feed", "news.feed.link");

  static FeedLink family(String key) {
    return new FeedLink(familyPath(key), "news.feed.link.family");
  }

  static String familyPath(String key) {
    return "/feed/families/" + UriUtils.encodePathSegment(key, StandardCharsets.UTF_8);
  }
}
