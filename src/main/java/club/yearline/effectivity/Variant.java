package club.yearline.effectivity;

import club.yearline.citation.Citation;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One designation within a family.
 *
 * @param key stable key
 * @param family key of its family
 * @param designation as on the type certificate
 * @param picture file name of its side view
 * @param summary plain text
 * @param names names it was sold under
 * @param runs its production runs
 * @param descent how it descends from other variants
 * @param citations its citations
 */
public record Variant(
    String key,
    String family,
    String designation,
    @Nullable String picture,
    @Nullable String summary,
    List<SoldName> names,
    List<ProductionRun> runs,
    List<Descent> descent,
    List<Citation> citations)
    implements Entry {

  public Variant {
    names = List.copyOf(names);
    runs = List.copyOf(runs);
    descent = List.copyOf(descent);
    citations = List.copyOf(citations);
  }

  @Override
  public EntryKind kind() {
    return EntryKind.VARIANT;
  }
}
