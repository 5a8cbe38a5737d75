package club.yearline.inspection;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Position;
import club.yearline.spotting.Claim;
import club.yearline.spotting.Seen;
import club.yearline.spotting.Spotting;
import club.yearline.spotting.Weighed;
import java.util.List;

/** Holds observations against a claim (domain: "inspection"). Pure. */
public final class Inspector {

  /** How many times the claim's share another's must be to cast doubt on the claim itself. */
  private static final double DOUBTFUL = 20;

  private Inspector() {}

  /**
   * Inspects.
   *
   * @param claim what the airframe is said to be
   * @param seen what was seen, each feature once
   * @throws IllegalArgumentException if a feature was seen twice
   */
  public static Inspection inspect(Catalogue catalogue, Position claim, List<Seen> seen) {
    return inspect(catalogue, claim, catalogue.expected(claim), seen);
  }

  static Inspection inspect(
      Catalogue catalogue, Position claim, List<Answer> expected, List<Seen> seen) {
    Expectation expectation = new Expectation(catalogue, claim, expected);
    List<Finding> findings = seen.stream().map(expectation::finding).toList();
    Weighed weighed =
        Spotting.of(catalogue, claim.variant().family()).orElseThrow().weigh(Claim.of(claim), seen);
    return new Inspection(
        claim, findings, expectation.calledFor(seen), verdict(findings, weighed), weighed);
  }

  static Verdict verdict(List<Finding> findings, Weighed weighed) {
    if (findings.stream().allMatch(f -> f.match() == Match.NOT_RECORDED)) {
      return Verdict.TOO_LITTLE;
    }
    if (findings.stream().noneMatch(f -> f.match() == Match.DIFFERS)) {
      return Verdict.CONSISTENT;
    }
    return weighed.bestOther().filter(o -> o.share() > DOUBTFUL * weighed.share()).isPresent()
        ? Verdict.CHECK_IDENTITY
        : Verdict.EXCHANGED_PARTS;
  }
}
