package club.yearline.groundschool;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.springframework.stereotype.Component;
import org.thymeleaf.context.Context;
import org.thymeleaf.spring6.SpringTemplateEngine;

/**
 * Drawings as files of their own: what a template draws on a page, with the style that on a page
 * comes from the sheet.
 */
@Component
class Drawings {

  private final SpringTemplateEngine templates;
  private final String style = style();

  Drawings(SpringTemplateEngine templates) {
    this.templates = templates;
  }

  /** The drawing of a template as SVG. */
  byte[] svg(String template, Map<String, Object> words) {
    String html = templates.process(template, new Context(Locale.ENGLISH, words));
    Document read = Jsoup.parse(html, "", Parser.xmlParser());
    Element drawing = Objects.requireNonNull(read.selectFirst("svg[viewBox]"), template);
    read.select("defs").forEach(defs -> drawing.prependChild(defs.clone()));
    drawing.prependElement("style").text(style);
    drawing.attr("xmlns", "http://www.w3.org/2000/svg");
    Document alone = new Document("");
    alone.outputSettings().syntax(Document.OutputSettings.Syntax.xml).prettyPrint(false);
    alone.appendChild(drawing);
    return alone.outerHtml().getBytes(StandardCharsets.UTF_8);
  }

  private static String style() {
    try (InputStream in = stream("/print/drawing.css")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static InputStream stream(String path) {
    return Objects.requireNonNull(Drawings.class.getResourceAsStream(path), path);
  }
}
