package club.yearline.web;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.servlet.resource.ResourceUrlProvider;

/**
 * The script that keeps pages readable without a connection. It lies at the root, because it may
 * serve only what lies below it, and names the static files by their hashed addresses, so that it
 * changes when they do.
 */
@Controller
class OfflineController {

  private static final List<String> SHELL =
      List.of(
          "/css/yearline.css",
          "/js/offline.js",
          "/js/inspect.js",
          "/webjars/htmx.org/dist/htmx.min.js");

  private static final String SCRIPT = script();

  private final Assets assets;
  private final Phrases phrases;

  OfflineController(ObjectProvider<ResourceUrlProvider> urls, Phrases phrases) {
    this.assets = new Assets(urls);
    this.phrases = phrases;
  }

  @GetMapping("/worker.js")
  ResponseEntity<String> worker(HttpServletRequest request) {
    String root = request.getContextPath();
    String shell =
        SHELL.stream()
            .map(file -> quoted(root + assets.address(file)))
            .collect(Collectors.joining(", ", "const SHELL = [", "];\n"));
    String words =
        List.of("kept", "title", "text").stream()
            .map(key -> key + ": " + quoted(phrases.of("offline." + key)))
            .collect(Collectors.joining(", ", "const WORDS = {", "};\n"));
    return ResponseEntity.ok()
        .contentType(new MediaType("text", "javascript", StandardCharsets.UTF_8))
        .cacheControl(CacheControl.noCache())
        .body(shell + "const ROOT = " + quoted(root) + ";\n" + words + SCRIPT);
  }

  private static String quoted(String text) {
    return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("<", "\\u003c") + "\"";
  }

  private static String script() {
    try (InputStream in =
        Objects.requireNonNull(OfflineController.class.getResourceAsStream("/offline/worker.js"))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
