package club.yearline.estimation;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Where a change cut in, by airframes that were looked at: at one serial (clean) or over a stretch
 * in which old and new left the factory side by side (window). Both are as likely beforehand. What
 * it costs grows with the airframes, never with the serials.
 */
public final class Estimate {

  private static final double CREDIBLE = 0.95;

  private final Bounds candidates;
  private final List<Sighting> sightings;
  private final Cells cells;
  private final CleanModel clean;
  private final @Nullable WindowModel window;
  private final double cleanChance;

  private Estimate(Bounds candidates, List<Sighting> sightings) {
    this.candidates = candidates;
    this.sightings = List.copyOf(sightings);
    this.cells = new Cells(candidates, sightings);
    Likelihoods likelihoods = new Likelihoods(cells, sightings);
    this.clean = new CleanModel(cells, likelihoods);
    this.window = candidates.size() > 1 ? new WindowModel(cells, likelihoods) : null;
    this.cleanChance =
        window == null ? 1 : 1 / (1 + Math.exp(window.logEvidence() - clean.logEvidence()));
  }

  /**
   * Estimates a cut-in.
   *
   * @param candidates the serials of which one may be the first new one
   * @param sightings what was seen, also outside the candidates; each airframe once
   */
  public static Estimate of(Bounds candidates, List<Sighting> sightings) {
    return new Estimate(candidates, sightings);
  }

  /** The serials of which one may be the first new one. */
  public Bounds candidates() {
    return candidates;
  }

  /** The airframes that count. */
  public List<Sighting> sightings() {
    return sightings;
  }

  /** The chance that it cut in at one serial; 1 where there is only one candidate. */
  public double cleanChance() {
    return cleanChance;
  }

  /** The chance that old and new left the factory side by side for a while. */
  public double windowChance() {
    return window == null ? 0 : 1 / (1 + Math.exp(clean.logEvidence() - window.logEvidence()));
  }

  /**
   * The natural logarithm of how much likelier a clean cut-in makes what was seen than a window;
   * empty where there is only one candidate, and so no window.
   */
  public OptionalDouble logBayesFactor() {
    return window == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(clean.logEvidence() - window.logEvidence());
  }

  /** Where a clean cut-in lies most probably: the stretches of greatest density, by serial. */
  public List<Bounds> densest() {
    return clean.densest();
  }

  /** The stretches that hold a clean cut-in with a chance of 95 %, by serial. */
  public List<Bounds> credible() {
    return clean.credible(CREDIBLE);
  }

  /** Where a window most probably begins and ends; empty where there is only one candidate. */
  public Optional<WindowStretches> window() {
    return Optional.ofNullable(window).map(WindowModel::densest);
  }

  /** The airframes whose value more probably than not contradicts where they stand, by serial. */
  public List<Suspect> suspects() {
    return sightings.stream()
        .map(s -> new Suspect(s, contradiction(s)))
        .filter(s -> s.chance() > 0.5)
        .sorted(Comparator.comparing(s -> s.sighting().serial()))
        .toList();
  }

  private double contradiction(Sighting sighting) {
    int passed = cells.countUpTo(sighting.ordinal());
    return sighting.isNew() ? stillOld(passed) : allNew(passed);
  }

  /** The chance that everything at the end of the first cells was old. */
  private double stillOld(int passed) {
    return cleanChance * clean.above(passed)
        + (window == null ? 0 : windowChance() * window.beginsAbove(passed));
  }

  /** The chance that everything at the end of the first cells was new. */
  private double allNew(int passed) {
    return cleanChance * clean.upTo(passed)
        + (window == null ? 0 : windowChance() * window.endsUpTo(passed));
  }

  /**
   * How the chance that an airframe left the factory with the new one grows, over both models: from
   * before the first candidate, over the ordinals at which an airframe was seen, to the last.
   */
  public List<Point> growth() {
    return IntStream.rangeClosed(0, cells.count())
        .mapToObj(
            passed ->
                new Point(
                    passed == 0 ? candidates.first() - 1 : cells.last(passed - 1),
                    (1 + allNew(passed) - stillOld(passed)) / 2))
        .toList();
  }

  /**
   * A point of the growth.
   *
   * @param ordinal the ordinal; one less than the first candidate to begin with
   * @param chance the chance that it left the factory with the new one
   */
  public record Point(long ordinal, double chance) {}
}
