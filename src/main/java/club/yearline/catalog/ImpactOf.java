package club.yearline.catalog;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Impact;
import club.yearline.effectivity.ImpactRow;
import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.List;
import org.springframework.stereotype.Component;

/** The impact between published states; a few are kept, since a large one is costly. */
@Component
public class ImpactOf {

  private static final int KEPT = 4;

  private final Cache<Pair, List<ImpactRow>> kept = Caffeine.newBuilder().maximumSize(KEPT).build();

  private record Pair(Catalogue before, Catalogue after) {}

  /** Every stretch of positions whose answer differs between two states. */
  public List<ImpactRow> between(Catalogue before, Catalogue after) {
    return kept.get(new Pair(before, after), p -> Impact.between(p.before(), p.after()));
  }
}
