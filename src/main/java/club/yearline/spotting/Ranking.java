package club.yearline.spotting;

import club.yearline.effectivity.Visibility;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The pairs considered, ranked by what was seen: prior times chances, normalised over the pairs
 * (Bayes' rule, observations independent given the pair). Immutable.
 */
public final class Ranking {

  /** How many times likelier than the mean an observation must be to speak for a pair. */
  private static final double SPEAKS = 2;

  /** Exactly twice and exactly half count, whatever the last digit of a sum. */
  private static final double ROUNDING = 1e-12;

  /** Below this many bits a question tells nothing, but for what arithmetic leaves over. */
  private static final double NOTHING = 1e-9;

  private final Considered considered;
  private final List<Seen> seen;
  private final List<Seen> leftOut;
  private final double[] shares;
  private final int[] order;

  /** By observation, the prior-weighted mean of its chance over the pairs. */
  private final double[] means;

  Ranking(Considered considered, List<Seen> seen) {
    this.considered = considered;
    this.leftOut = seen.stream().filter(s -> considered.of(s.feature()).isEmpty()).toList();
    this.seen = seen.stream().filter(s -> !leftOut.contains(s)).toList();
    this.shares = Shares.of(considered.logs(this.seen));
    this.order = Shares.ranked(shares);
    this.means = this.seen.stream().mapToDouble(this::mean).toArray();
  }

  private double mean(Seen one) {
    FeatureChances chances = considered.of(one.feature());
    double sum = 0;
    double weights = 0;
    for (int i = 0; i < shares.length; i++) {
      sum += considered.weight(i) * chances.at(i, one.value());
      weights += considered.weight(i);
    }
    return sum / weights;
  }

  /** What counts, by feature key. */
  public List<Seen> seen() {
    return seen;
  }

  /** Figures seen of which no value is recorded for any variant considered: they do not count. */
  public List<Seen> leftOut() {
    return leftOut;
  }

  /** How many pairs are ranked. */
  public int size() {
    return shares.length;
  }

  /** The pairs of greatest share, greatest first; at most so many. */
  public List<Ranked> best(int limit) {
    return Arrays.stream(order).limit(limit).mapToObj(this::ranked).toList();
  }

  /** The ranking with neighbouring years joined that nothing seen tells apart. */
  public Spans spans() {
    return new Spans(considered, this);
  }

  /** The entropy of the shares in bits: 0 where one pair is certain. */
  public double bits() {
    return Arrays.stream(shares).map(Bits::of).sum();
  }

  double share(int pair) {
    return shares[pair];
  }

  /** The share (0 to 1) of a pair; 0 where it is not considered. */
  public double share(String variant, int year) {
    OptionalInt index = considered.index(variant, year);
    return index.isEmpty() ? 0 : shares[index.getAsInt()];
  }

  /**
   * The features worth looking at next, the one that tells most first: those that can be seen from
   * where the person stands, were not seen yet and can tell pairs apart.
   *
   * @param standing where the person stands
   * @param aside keys of features not to be asked
   */
  public List<NextQuestion> next(Visibility standing, Collection<String> aside) {
    Set<String> asked = Set.copyOf(Stream.concat(seenKeys(), aside.stream()).toList());
    considered.workOut();
    List<NextQuestion> questions = new ArrayList<>();
    considered.features().stream()
        .filter(f -> f.visibility().seenFrom(standing) && !asked.contains(f.key()))
        .filter(f -> !considered.of(f).isEmpty())
        .map(f -> new NextQuestion(f, considered.of(f).bits(shares)))
        .filter(q -> q.bits() > NOTHING)
        .forEach(questions::add);
    questions.sort(
        Comparator.comparingDouble((NextQuestion q) -> -q.bits())
            .thenComparing(q -> q.feature().key()));
    return List.copyOf(questions);
  }

  private Stream<String> seenKeys() {
    return Stream.concat(seen.stream(), leftOut.stream()).map(s -> s.feature().key()).distinct();
  }

  Ranked ranked(int pair) {
    List<Seen> speakingFor = new ArrayList<>();
    List<Seen> speakingAgainst = new ArrayList<>();
    for (int i = 0; i < means.length; i++) {
      Seen one = seen.get(i);
      double chance = considered.of(one.feature()).at(pair, one.value());
      if (chance >= SPEAKS * means[i] * (1 - ROUNDING)) {
        speakingFor.add(one);
      } else if (chance <= means[i] / SPEAKS * (1 + ROUNDING)) {
        speakingAgainst.add(one);
      }
    }
    return new Ranked(considered.pairs().get(pair), shares[pair], speakingFor, speakingAgainst);
  }
}
