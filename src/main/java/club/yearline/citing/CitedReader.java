package club.yearline.citing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;

/**
 * Takes the text out of the HTML that the library writes, so that pages escape it like any other.
 */
final class CitedReader {

  private static final Pattern SPACE = Pattern.compile("[\\s\\u00a0]+");

  private final List<Cited.Run> runs = new ArrayList<>();

  private CitedReader() {}

  static Cited read(String html) {
    CitedReader reader = new CitedReader();
    for (Element entry : Jsoup.parseBodyFragment(html).select(".csl-entry")) {
      reader.add(entry, false);
    }
    return new Cited(reader.trimmed());
  }

  private void add(Node node, boolean italic) {
    if (node instanceof TextNode text) {
      add(SPACE.matcher(text.getWholeText()).replaceAll(" "), italic);
      return;
    }
    boolean slanted = italic || node.attr("style").contains("italic");
    for (Node child : node.childNodes()) {
      add(child, slanted);
    }
  }

  private void add(String text, boolean italic) {
    Cited.Run last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
    String fresh =
        text.startsWith(" ") && (last == null || last.text().endsWith(" "))
            ? text.substring(1)
            : text;
    if (fresh.isEmpty()) {
      return;
    }
    if (last != null && last.italic() == italic) {
      runs.set(runs.size() - 1, new Cited.Run(last.text() + fresh, italic));
    } else {
      runs.add(new Cited.Run(fresh, italic));
    }
  }

  private List<Cited.Run> trimmed() {
    int end = runs.size() - 1;
    if (end >= 0) {
      Cited.Run last = runs.get(end);
      runs.set(end, new Cited.Run(last.text().stripTrailing(), last.italic()));
    }
    return runs.stream().filter(run -> !run.text().isEmpty()).toList();
  }
}
