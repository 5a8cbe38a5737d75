package club.yearline.effectivity;

import club.yearline.citation.Citation;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A record that from its cut-in on, a feature's offering is so-and-so.
 *
 * @param key stable key
 * @param feature key of the feature that changes
 * @param title one line
 * @param detail plain text
 * @param offering the values available new from the change on
 * @param cutIns where it takes effect, one for each variant it applies to
 * @param citations its citations
 */
public record Change(
    String key,
    String feature,
    String title,
    @Nullable String detail,
    List<Offered> offering,
    List<CutIn> cutIns,
    List<Citation> citations)
    implements Entry {

  public Change {
    offering = List.copyOf(offering);
    cutIns = List.copyOf(cutIns);
    citations = List.copyOf(citations);
  }

  @Override
  public EntryKind kind() {
    return EntryKind.CHANGE;
  }

  /** The cut-in for the given variant; empty where the change does not apply to it. */
  public Optional<CutIn> cutIn(String variantKey) {
    return cutIns.stream().filter(c -> c.variant().equals(variantKey)).findFirst();
  }
}
