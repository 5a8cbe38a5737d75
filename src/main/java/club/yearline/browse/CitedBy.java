package club.yearline.browse;

import club.yearline.citation.Citation;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Entry;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which records cite which source, over a whole catalogue. */
final class CitedBy {

  private final Map<String, List<Mention>> bySource = new HashMap<>();

  CitedBy(Catalogue catalogue) {
    for (Entry entry : catalogue.records().entries()) {
      for (Citation citation : entry.citations()) {
        bySource
            .computeIfAbsent(citation.source(), k -> new ArrayList<>())
            .add(new Mention(entry, citation));
      }
    }
  }

  /** A record and one of its citations. */
  record Mention(Entry entry, Citation citation) {}

  /** What cites a source, in the order of the catalogue. */
  List<Mention> source(String key) {
    return List.copyOf(bySource.getOrDefault(key, List.of()));
  }

  long supports(String source) {
    return source(source).stream().filter(c -> c.citation().supports()).count();
  }

  long disputes(String source) {
    return source(source).size() - supports(source);
  }
}
