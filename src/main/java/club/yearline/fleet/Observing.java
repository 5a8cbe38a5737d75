package club.yearline.fleet;

import club.yearline.accounts.Actor;
import club.yearline.catalog.Snapshots;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Values;
import club.yearline.uploads.Evidence;
import club.yearline.web.Refusal;
import java.util.HashSet;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** What owners record of their airframes. */
@Component
@Transactional
class Observing {

  /** Far above any logbook: nobody fills the register. */
  private static final int MOST = 5000;

  private final Keeping keeping;
  private final Observations observations;
  private final Photographs photographs;
  private final Sightings sightings;
  private final Snapshots snapshots;

  Observing(
      Keeping keeping,
      Observations observations,
      Photographs photographs,
      Sightings sightings,
      Snapshots snapshots) {
    this.keeping = keeping;
    this.observations = observations;
    this.photographs = photographs;
    this.sightings = sightings;
    this.snapshots = snapshots;
  }

  /** Records what was seen on an own airframe. */
  Observation observe(Actor actor, long airframe, Seen seen, String token) {
    keeping.own(actor, airframe);
    requireKnown(seen);
    if (observations.countByAirframeId(airframe) >= MOST) {
      throw Refusal.unprocessable("fleet-seen-often", MOST);
    }
    Observation stored = observations.saveAndFlush(Observation.of(airframe, seen, token));
    Set<String> known = new HashSet<>();
    for (Evidence file : seen.photographs()) {
      if (known.add(Photograph.digest(file.bytes()))) {
        photographs.save(Photograph.of(stored.id(), file));
      }
    }
    return stored;
  }

  /** The same for a form: sent again, it is recorded already. */
  void observeOnce(Actor actor, long airframe, Seen seen, String token) {
    keeping.own(actor, airframe);
    if (observations.findByAirframeIdAndFormToken(airframe, token).isEmpty()) {
      observe(actor, airframe, seen, token);
    }
  }

  /** Takes back what was seen; what is gone already stays gone. */
  void forget(Actor actor, long airframe, long observation) {
    keeping.own(actor, airframe);
    observations
        .findByIdAndAirframeId(observation, airframe)
        .ifPresent(
            o -> {
              sightings.forgetUnpublished(o);
              observations.delete(o);
            });
  }

  private void requireKnown(Seen seen) {
    Feature feature =
        snapshots
            .head()
            .catalogue()
            .feature(seen.feature())
            .orElseThrow(
                () ->
                    Refusal.unprocessable("fleet-no-feature", seen.feature())
                        .at("feature", "fleet.fault.feature"));
    boolean known =
        feature.isNumber()
            ? Values.number(seen.value()).isPresent()
            : feature.value(seen.value()).isPresent();
    if (!known) {
      throw Refusal.unprocessable("fleet-no-value", feature.name(), seen.value())
          .at("value", "fleet.fault.value", feature.name());
    }
  }
}
