package club.yearline.spotting;

import club.yearline.effectivity.Position;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Weighs claims against the pairs considered. */
final class Weighing {

  private final Considered considered;
  private final List<Seen> seen;

  Weighing(Considered considered, List<Seen> seen) {
    this.considered = considered;
    this.seen = seen;
  }

  Weighed of(Claim claim) {
    List<Pair> pairs = new ArrayList<>(considered.pairs());
    double[] logs = considered.logs(seen);
    Integer year = claim.year();
    if (year != null && considered.index(claim.variant().key(), year).isEmpty()) {
      pairs.add(new Pair(claim.variant(), year));
      logs = Arrays.copyOf(logs, pairs.size());
      logs[logs.length - 1] =
          logWeight(logs.length - 1, claim) + logLikelihood(Position.of(claim.variant(), year));
    }
    if (claim.hasSerial() && claim.position() != null) {
      takeAtSerial(pairs, logs, claim, logLikelihood(claim.position()));
    }
    return weighed(pairs, Shares.of(logs), claim);
  }

  private void takeAtSerial(List<Pair> pairs, double[] logs, Claim claim, double likelihood) {
    for (int i = 0; i < logs.length; i++) {
      if (claim.holds(pairs.get(i))) {
        logs[i] = logWeight(i, claim) + likelihood;
      }
    }
  }

  private double logWeight(int pair, Claim claim) {
    return Math.log(
        pair < considered.pairs().size()
            ? considered.weight(pair)
            : considered.weightWithoutBlocks(claim.variant().family()));
  }

  private double logLikelihood(Position position) {
    return considered.logLikelihood(position, seen);
  }

  private static Weighed weighed(List<Pair> pairs, double[] shares, Claim claim) {
    List<Share> ranked =
        Arrays.stream(Shares.ranked(shares))
            .mapToObj(i -> new Share(pairs.get(i), shares[i]))
            .toList();
    double claimed =
        ranked.stream().filter(s -> claim.holds(s.pair())).mapToDouble(Share::share).sum();
    return new Weighed(
        claimed, ranked, ranked.stream().filter(s -> !claim.holds(s.pair())).findFirst());
  }
}
