package club.yearline.browse;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.EntryKind;
import club.yearline.effectivity.Finding;
import club.yearline.effectivity.Findings;
import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/**
 * The findings about single records. Checking looks at the whole catalogue, so it is done once for
 * each of its states, when first asked.
 */
@Component
class FindingsOf {

  private static final int REVISIONS = 4;

  /** The tables whose records are parts of changes, their keys beginning with the change's. */
  private static final List<String> PARTS = List.of("changes", "cut-ins", "change-offerings");

  private final Cache<Catalogue, Map<String, List<Finding>>> kept =
      Caffeine.newBuilder().weakKeys().maximumSize(REVISIONS).build();

  /** What is doubtful about a change: about itself, its offering and its cut-ins. */
  List<Finding> change(Catalogue catalogue, String key) {
    return of(catalogue, EntryKind.CHANGE, key);
  }

  /** What is doubtful about a feature. */
  List<Finding> feature(Catalogue catalogue, String key) {
    return of(catalogue, EntryKind.FEATURE, key);
  }

  private List<Finding> of(Catalogue catalogue, EntryKind kind, String key) {
    return kept.get(catalogue, FindingsOf::index)
        .getOrDefault(kind.resource() + "/" + key, List.of());
  }

  private static Map<String, List<Finding>> index(Catalogue catalogue) {
    return Findings.in(catalogue.records()).stream()
        .collect(Collectors.groupingBy(FindingsOf::owner));
  }

  private static String owner(Finding finding) {
    String owner = finding.record().split("/", 2)[0];
    String table = PARTS.contains(finding.table()) ? "changes" : finding.table();
    return table + "/" + owner;
  }
}
