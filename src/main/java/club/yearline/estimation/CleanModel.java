package club.yearline.estimation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The cut-in at one serial: each candidate is as likely beforehand. */
final class CleanModel {

  /** Sums of shares fall short of the whole by as much as rounding takes. */
  private static final double ROUNDING = 1e-12;

  private final Cells cells;
  private final double[] density;
  private final double logSum;

  /** For each cell, the chance that the cut-in lies in it or below. */
  private final double[] upTo;

  /** For each cell, the chance that the cut-in lies above it. */
  private final double[] above;

  CleanModel(Cells cells, Likelihoods likelihoods) {
    this.cells = cells;
    this.density = likelihoods.clean;
    LogSum sum = new LogSum();
    double[] logs = new double[cells.count()];
    for (int cell = 0; cell < logs.length; cell++) {
      logs[cell] = cells.logSize(cell) + density[cell];
      sum.add(logs[cell]);
    }
    this.logSum = sum.log();
    this.upTo = Shares.upTo(logs);
    this.above = Shares.above(logs);
  }

  /** The logarithm of the chance of all that was seen. */
  double logEvidence() {
    return logSum - Math.log((double) cells.size());
  }

  /** The chance that the cut-in lies in one of the first cells. */
  double upTo(int count) {
    return count == 0 ? 0 : upTo[count - 1];
  }

  /** The chance that the cut-in lies in none of the first cells. */
  double above(int count) {
    return count == 0 ? 1 : above[count - 1];
  }

  /** The stretches of greatest density, by serial. */
  List<Bounds> densest() {
    List<Run> runs = runs();
    return runs.stream()
        .filter(r -> r.density == runs.get(0).density)
        .map(r -> cells.range(r.from, r.to))
        .toList();
  }

  /** Whole stretches, densest first, until they hold the share; by serial, neighbours joined. */
  List<Bounds> credible(double share) {
    List<Run> chosen = new ArrayList<>();
    double held = 0;
    for (Run run : runs()) {
      if (held >= share - ROUNDING) {
        break;
      }
      chosen.add(run);
      held +=
          Math.exp(Math.log((double) cells.range(run.from, run.to).size()) + run.density - logSum);
    }
    chosen.sort(Comparator.comparingInt(Run::from));
    return joined(chosen);
  }

  private List<Bounds> joined(List<Run> runs) {
    List<Bounds> joined = new ArrayList<>();
    for (Run run : runs) {
      Bounds range = cells.range(run.from, run.to);
      int last = joined.size() - 1;
      if (last >= 0 && joined.get(last).last() + 1 == range.first()) {
        joined.set(last, new Bounds(joined.get(last).first(), range.last()));
      } else {
        joined.add(range);
      }
    }
    return List.copyOf(joined);
  }

  /** The stretches of equal density, densest first, lower serials first among equals. */
  private List<Run> runs() {
    List<Run> runs = new ArrayList<>();
    int from = 0;
    for (int cell = 0; cell < cells.count(); cell++) {
      if (cell + 1 == cells.count() || density[cell + 1] != density[cell]) {
        runs.add(new Run(from, cell, density[cell]));
        from = cell + 1;
      }
    }
    runs.sort(Comparator.comparingDouble(Run::density).reversed().thenComparingInt(Run::from));
    return runs;
  }

  /** Neighbouring cells of equal density. */
  private record Run(int from, int to, double density) {}
}
