package club.yearline.catalog;

import club.yearline.citation.Citation;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Entry;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which records cite which source, over a whole catalogue. */
public final class CitedBy {

  private static final PerCatalogue<CitedBy> GATHERED = new PerCatalogue<>(CitedBy::new);

  private final Map<String, List<Mention>> bySource = new HashMap<>();

  private CitedBy(Catalogue catalogue) {
    for (Entry entry : catalogue.records().entries()) {
      for (Citation citation : entry.citations()) {
        bySource
            .computeIfAbsent(citation.source(), k -> new ArrayList<>())
            .add(new Mention(entry, citation));
      }
    }
  }

  /** What cites the sources of a catalogue; gathered once for each of its states. */
  public static CitedBy of(Catalogue catalogue) {
    return GATHERED.of(catalogue);
  }

  /** A record and one of its citations. */
  public record Mention(Entry entry, Citation citation) {}

  /** What cites a source, in the order of the catalogue. */
  public List<Mention> source(String key) {
    return List.copyOf(bySource.getOrDefault(key, List.of()));
  }

  /** How many citations of a source speak for the record that cites it. */
  public long supports(String source) {
    return source(source).stream().filter(c -> c.citation().supports()).count();
  }

  /** How many citations of a source speak against the record that cites it. */
  public long disputes(String source) {
    return source(source).size() - supports(source);
  }
}
