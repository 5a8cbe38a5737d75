package club.yearline.evidence;

import club.yearline.accounts.Actor;
import club.yearline.corrections.Narrowing;
import club.yearline.corrections.Proposing;
import club.yearline.fleet.Sightings;
import club.yearline.fleet.UsedObservation.Uses;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Corrections that stand on airframes of the register, and which these were: both or neither. */
@Component
class Narrowings {

  private final Proposing proposing;
  private final Sightings sightings;

  Narrowings(Proposing proposing, Sightings sightings) {
    this.proposing = proposing;
    this.sightings = sightings;
  }

  /** Prepares the draft and notes what it stands on. */
  @Transactional
  long begin(Actor author, Narrowing narrowing, Uses uses, String formToken) {
    long correction = proposing.narrow(author, narrowing, formToken);
    sightings.use(correction, uses);
    return correction;
  }
}
