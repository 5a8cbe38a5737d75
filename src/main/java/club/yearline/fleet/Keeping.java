package club.yearline.fleet;

import club.yearline.accounts.Actor;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Serial;
import club.yearline.effectivity.Series;
import club.yearline.web.Refusal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Who keeps airframes here, and what is written about them. */
@Component
@Transactional
class Keeping {

  /** Far above any fleet: nobody fills the register. */
  private static final int MOST_AIRFRAMES = 500;

  /**
   * What goes when an airframe is deleted.
   *
   * @param observations how many observations
   * @param photographs how many photographs
   * @param used on how many of the observations a published correction stands, without the serial
   */
  record Goes(long observations, long photographs, long used) {}

  private final Airframes airframes;
  private final Observations observations;
  private final Photographs photographs;
  private final Sightings sightings;

  Keeping(
      Airframes airframes,
      Observations observations,
      Photographs photographs,
      Sightings sightings) {
    this.airframes = airframes;
    this.observations = observations;
    this.photographs = photographs;
    this.sightings = sightings;
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

  /**
   * Registers an airframe by a form; sent again, it is registered already.
   *
   * @return its number
   * @throws Refusal if this person has registered that serial before
   */
  long registerOnce(Actor actor, NewAirframe airframe, String token) {
    return airframes
        .findByOwnerIdAndFormToken(actor.id(), token)
        .orElseGet(
            () -> {
              requireUnregistered(actor, airframe.position(), null);
              return register(actor, airframe, token);
            })
        .id();
  }

  /**
   * Says anew what an airframe is.
   *
   * @param version the version that the form saw
   * @throws Refusal if it has changed since, or this person has another of that serial
   */
  long describe(Actor actor, long id, int version, NewAirframe airframe) {
    Airframe described = own(actor, id);
    if (described.version() != version) {
      throw moved();
    }
    requireUnregistered(actor, airframe.position(), id);
    described.describe(airframe);
    try {
      airframes.flush();
    } catch (OptimisticLockingFailureException e) {
      throw moved();
    }
    return id;
  }

  private void requireUnregistered(Actor actor, Position position, @Nullable Long but) {
    ofSerial(actor, position)
        .filter(a -> but == null || a.id() != but)
        .ifPresent(
            known -> {
              String serial = String.valueOf(known.serial());
              throw Refusal.of(HttpStatus.CONFLICT, "airframe-registered", serial)
                  .at("serial", "fleet.fault.registered", serial);
            });
  }

  void share(Actor actor, long id, boolean withTheClub) {
    own(actor, id).share(withTheClub);
  }

  void showSerial(Actor actor, long id, boolean agreed) {
    own(actor, id).showSerial(agreed);
  }

  /** What goes when an airframe is deleted, and what remains. */
  @Transactional(readOnly = true)
  public Goes whatGoes(Actor actor, long id) {
    own(actor, id);
    return new Goes(
        observations.countByAirframeId(id), photographs.list(id).size(), sightings.published(id));
  }

  /** Takes an airframe out, with all that was seen on it. */
  void delete(Actor actor, long id) {
    delete(own(actor, id));
  }

  /** Takes out all that a person has registered. */
  void forgetAll(long person) {
    airframes.findByOwnerIdOrderById(person).forEach(this::delete);
    airframes.flush();
  }

  private void delete(Airframe airframe) {
    sightings.forgetUnpublished(airframe);
    airframes.delete(airframe);
  }

  private static Refusal moved() {
    return Refusal.of(HttpStatus.CONFLICT, "airframe-changed");
  }

  static Refusal unknown(Object id) {
    return Refusal.notFound("unknown-airframe", id);
  }
}
