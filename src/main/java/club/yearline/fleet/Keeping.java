package club.yearline.fleet;

import club.yearline.accounts.Actor;
import club.yearline.catalog.Snapshots;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Serial;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.Values;
import club.yearline.uploads.Evidence;
import club.yearline.web.Refusal;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Who keeps airframes here, and what is written about them. */
@Component
@Transactional
class Keeping {

  /** Far above any fleet, and any logbook: nobody fills the register. */
  private static final int MOST_AIRFRAMES = 500;

  private static final int MOST_OBSERVATIONS = 5000;

  private final Airframes airframes;
  private final Observations observations;
  private final Photographs photographs;
  private final Snapshots snapshots;

  Keeping(
      Airframes airframes,
      Observations observations,
      Photographs photographs,
      Snapshots snapshots) {
    this.airframes = airframes;
    this.observations = observations;
    this.photographs = photographs;
    this.snapshots = snapshots;
  }

  /**
   * An airframe to look at.
   *
   * @throws Refusal if there is none that this person may see
   */
  @Transactional(readOnly = true)
  public Airframe visible(Actor actor, long id) {
    return airframes.findById(id).filter(a -> a.isVisibleTo(actor)).orElseThrow(() -> unknown(id));
  }

  /**
   * An airframe to change. Who may only look at it is told so; to all others there is none.
   *
   * @throws Refusal if it is not this person's own
   */
  @Transactional(readOnly = true)
  public Airframe own(Actor actor, long id) {
    Airframe airframe = visible(actor, id);
    if (!airframe.isOwnedBy(actor)) {
      throw Refusal.of(HttpStatus.FORBIDDEN, "airframe-of-other");
    }
    return airframe;
  }

  /** A person's own airframe of a serial. */
  @Transactional(readOnly = true)
  public Optional<Airframe> ofSerial(Actor actor, Position position) {
    Series series = position.series();
    Serial serial = position.serial();
    return series == null || serial == null
        ? Optional.empty()
        : airframes.findByOwnerIdAndSeriesKeyAndSerialOrdinalAndSerialSuffix(
            actor.id(), series.key(), serial.ordinal(), suffix(serial));
  }

  private static String suffix(Serial serial) {
    return serial.suffix() == Serial.NO_SUFFIX ? "" : String.valueOf(serial.suffix());
  }

  Airframe register(Actor actor, NewAirframe airframe, String token) {
    if (airframes.findByOwnerIdOrderById(actor.id()).size() >= MOST_AIRFRAMES) {
      throw Refusal.unprocessable("fleet-full", MOST_AIRFRAMES);
    }
    return airframes.saveAndFlush(Airframe.register(actor, airframe, token));
  }

  /** Records what was seen on an own airframe. */
  Observation observe(Actor actor, long airframe, Seen seen, String token) {
    own(actor, airframe);
    requireKnown(seen);
    if (observations.countByAirframeId(airframe) >= MOST_OBSERVATIONS) {
      throw Refusal.unprocessable("fleet-seen-often", MOST_OBSERVATIONS);
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

  static Refusal unknown(Object id) {
    return Refusal.notFound("unknown-airframe", id);
  }
}
