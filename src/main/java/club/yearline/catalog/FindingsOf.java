package club.yearline.catalog;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.EntryKind;
import club.yearline.effectivity.Finding;
import club.yearline.effectivity.Findings;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/**
 * The findings of a published state. Checking looks at the whole catalogue, so it is done once for
 * each of its states, when first asked.
 */
@Component
public class FindingsOf {

  /** The tables whose records are parts of changes, their keys beginning with the change's. */
  private static final List<String> PARTS = List.of("changes", "cut-ins", "change-offerings");

  private final PerCatalogue<List<Finding>> found =
      new PerCatalogue<>(c -> Findings.in(c.records()));
  private final PerCatalogue<Map<String, List<Finding>>> byOwner =
      new PerCatalogue<>(
          c -> found.of(c).stream().collect(Collectors.groupingBy(FindingsOf::owner)));

  /** All of them, gravest first. */
  public List<Finding> all(Catalogue catalogue) {
    return found.of(catalogue);
  }

  /** What is doubtful about a change: about itself, its offering and its cut-ins. */
  public List<Finding> change(Catalogue catalogue, String key) {
    return of(catalogue, EntryKind.CHANGE, key);
  }

  /** What is doubtful about a feature. */
  public List<Finding> feature(Catalogue catalogue, String key) {
    return of(catalogue, EntryKind.FEATURE, key);
  }

  private List<Finding> of(Catalogue catalogue, EntryKind kind, String key) {
    return byOwner.of(catalogue).getOrDefault(kind.resource() + "/" + key, List.of());
  }

  private static String owner(Finding finding) {
    String owner = finding.record().split("/", 2)[0];
    String table = PARTS.contains(finding.table()) ? "changes" : finding.table();
    return table + "/" + owner;
  }
}
