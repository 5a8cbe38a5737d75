package club.yearline.spotting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The ranking with neighbouring years joined that nothing seen tells apart. Immutable. */
public final class Spans {

  /** Chances that differ by less are the same, but for what arithmetic leaves over. */
  private static final double SAME = 1e-9;

  private final Considered considered;
  private final Ranking ranking;
  private final List<Stretch> ranked;

  Spans(Considered considered, Ranking ranking) {
    this.considered = considered;
    this.ranking = ranking;
    List<Stretch> stretches = new ArrayList<>();
    int from = 0;
    for (int pair = 1; pair <= considered.pairs().size(); pair++) {
      if (pair == considered.pairs().size() || !joins(pair - 1, pair)) {
        stretches.add(new Stretch(from, pair, share(from, pair)));
        from = pair;
      }
    }
    stretches.sort(Comparator.comparingDouble(s -> -s.share()));
    this.ranked = List.copyOf(stretches);
  }

  /** The pairs from one index to before another. */
  private record Stretch(int from, int to, double share) {}

  /** How many there are. */
  public int size() {
    return ranked.size();
  }

  /** Those of greatest share, greatest first; at most so many. Equals keep the pairs' order. */
  public List<RankedSpan> best(int limit) {
    return ranked.stream().limit(limit).map(this::span).toList();
  }

  /** Whether no airframe of any year left the factory with all that was seen. */
  public boolean nothingFits() {
    return !ranked.isEmpty() && ranked.stream().noneMatch(s -> exchanged(s.from()).isEmpty());
  }

  private boolean joins(int before, int after) {
    Pair one = considered.pairs().get(before);
    Pair other = considered.pairs().get(after);
    return other.year() == one.year() + 1
        && one.variant().key().equals(other.variant().key())
        && ranking.seen().stream().allMatch(seen -> isSame(seen, before, after));
  }

  private boolean isSame(Seen seen, int before, int after) {
    FeatureChances chances = considered.of(seen.feature());
    return Math.abs(chances.at(before, seen.value()) - chances.at(after, seen.value())) < SAME;
  }

  private double share(int from, int to) {
    double sum = 0;
    for (int pair = from; pair < to; pair++) {
      sum += ranking.share(pair);
    }
    return sum;
  }

  private RankedSpan span(Stretch stretch) {
    List<Share> years = new ArrayList<>();
    for (int pair = stretch.from(); pair < stretch.to(); pair++) {
      years.add(new Share(considered.pairs().get(pair), ranking.share(pair)));
    }
    Ranked first = ranking.ranked(stretch.from());
    return new RankedSpan(
        first.pair().variant(),
        years,
        stretch.share(),
        first.speakingFor(),
        first.speakingAgainst(),
        exchanged(stretch.from()));
  }

  private List<Seen> exchanged(int pair) {
    return ranking.seen().stream()
        .filter(s -> !considered.of(s.feature()).isBuilt(pair, s.value()))
        .toList();
  }
}
