package club.yearline.inspection;

import club.yearline.effectivity.Position;
import club.yearline.spotting.Weighed;
import java.util.List;

/**
 * What observations say of a claim: one finding for each, and what they say together. Immutable.
 *
 * @param claim what the airframe is said to be
 * @param findings one for each observation, in their order
 * @param calledFor every mandatory retrofit that the claimed position calls for
 * @param verdict what the findings say together
 * @param weighed the claim against the other variants and years of its family
 */
public record Inspection(
    Position claim,
    List<Finding> findings,
    List<CalledFor> calledFor,
    Verdict verdict,
    Weighed weighed) {

  public Inspection {
    findings = List.copyOf(findings);
    calledFor = List.copyOf(calledFor);
  }

  /** The findings that the logbooks must explain. */
  public List<Finding> questions() {
    return findings.stream().filter(f -> f.match().asksLogbooks()).toList();
  }
}
