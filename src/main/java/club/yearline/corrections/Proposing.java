package club.yearline.corrections;

import club.yearline.accounts.Actor;
import org.springframework.stereotype.Component;

/** Where other modules prepare corrections for somebody. */
@Component
public class Proposing {

  private final Drafting drafting;
  private final CorrectionReading reading;

  Proposing(Drafting drafting, CorrectionReading reading) {
    this.drafting = drafting;
    this.reading = reading;
  }

  /**
   * Prepares a draft from a data package; a form that is sent twice prepares it once.
   *
   * @return number of the correction
   */
  public long ofPackage(Actor author, String title, PackageProposal proposed, String formToken) {
    String token = reading.token(formToken);
    return reading.once(author, token, () -> drafting.ofPackage(author, title, proposed, token));
  }

  /**
   * Prepares a draft that narrows a cut-in by observed airframes, and stands on them; a form that
   * is sent twice prepares it once. Where the same form arrives twice at one moment, the later one
   * fails on a constraint and may be tried again.
   *
   * @return number of the correction
   */
  public long narrow(Actor author, Narrowing narrowing, String formToken) {
    return drafting.narrow(author, narrowing, reading.token(formToken)).id();
  }

  /** A draft from a data package, handed in at once, so that it can be decided on. */
  public long ofPackageHandedIn(
      Actor author, String title, PackageProposal proposed, String formToken) {
    long id = ofPackage(author, title, proposed, formToken);
    if (reading.canWrite(author, id)) {
      drafting.submit(author, id, reading.version(author, id), null);
    }
    return id;
  }
}
