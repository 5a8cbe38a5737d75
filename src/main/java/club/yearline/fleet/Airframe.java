package club.yearline.fleet;

import static java.util.Comparator.naturalOrder;

import club.yearline.accounts.Actor;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Serial;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** One physical aircraft that a member looks after here. Only its owner changes it. */
@Entity
class Airframe {

  /** In the order of the production line; those without a serial last. */
  static final Comparator<Airframe> BY_SERIAL =
      Comparator.comparing((Airframe a) -> a.seriesKey, Comparator.nullsLast(naturalOrder()))
          .thenComparing(a -> a.serialOrdinal, Comparator.nullsLast(naturalOrder()))
          .thenComparing(a -> a.serialSuffix)
          .thenComparing(a -> a.variantKey)
          .thenComparing(a -> a.modelYear, Comparator.nullsLast(naturalOrder()))
          .thenComparing(Airframe::id);

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "airframe_seq")
  @SequenceGenerator(name = "airframe_seq", sequenceName = "airframe_seq")
  private @Nullable Long id;

  @Version private int lockVersion;
  private long ownerId;
  private String variantKey;
  private @Nullable Integer modelYear;
  private @Nullable String seriesKey;
  private @Nullable String serial;
  private @Nullable Long serialOrdinal;
  private String serialSuffix = "";
  private @Nullable String registration;
  private @Nullable String registrationKey;
  private @Nullable String remarks;
  private boolean shared;
  private boolean serialShown;
  private Instant registeredAt;
  private Instant changedAt;
  private String formToken;

  protected Airframe() {}

  /**
   * Registers an airframe, private at first.
   *
   * @param token of the form, unique among its owner's
   */
  static Airframe register(Actor owner, NewAirframe airframe, String token) {
    Airframe registered = new Airframe();
    registered.ownerId = owner.id();
    registered.formToken = token;
    registered.describe(airframe);
    registered.registeredAt = registered.changedAt;
    return registered;
  }

  /** Says what it is, in place of what was said so far. */
  final void describe(NewAirframe airframe) {
    Position position = airframe.position();
    variantKey = position.variant().key();
    modelYear = position.year();
    seriesKey = position.series() == null ? null : position.series().key();
    serial = position.serialText();
    stamp(position.serial());
    registration = airframe.registration();
    registrationKey = registration == null ? null : Registration.key(registration);
    remarks = airframe.remarks();
    touch();
  }

  /** Opens it to every member, or closes it again. */
  void share(boolean withTheClub) {
    shared = withTheClub;
    touch();
  }

  /** Lets its serial be named where it serves as evidence, or no longer. */
  void showSerial(boolean agreed) {
    serialShown = agreed;
    touch();
  }

  private void stamp(@Nullable Serial read) {
    serialOrdinal = read == null ? null : Long.valueOf(read.ordinal());
    serialSuffix =
        read == null || read.suffix() == Serial.NO_SUFFIX ? "" : String.valueOf(read.suffix());
  }

  private void touch() {
    changedAt = Instant.now().truncatedTo(ChronoUnit.MICROS);
  }

  boolean isOwnedBy(Actor actor) {
    return ownerId == actor.id();
  }

  /** Whether somebody may see it: nobody but its owner, of whatever role, unless it is shared. */
  boolean isVisibleTo(Actor actor) {
    return shared || isOwnedBy(actor);
  }

  long id() {
    return Objects.requireNonNull(id);
  }

  /** Counts its changes, so that a form tells whether it is stale. */
  int version() {
    return lockVersion;
  }

  long owner() {
    return ownerId;
  }

  String variant() {
    return variantKey;
  }

  @Nullable Integer year() {
    return modelYear;
  }

  @Nullable String series() {
    return seriesKey;
  }

  /** The serial as stamped. */
  @Nullable String serial() {
    return serial;
  }

  @Nullable String registration() {
    return registration;
  }

  @Nullable String remarks() {
    return remarks;
  }

  boolean isShared() {
    return shared;
  }

  boolean isSerialShown() {
    return serialShown;
  }

  Instant registeredAt() {
    return registeredAt;
  }

  /** What other modules may know of it, as this person sees it. */
  Registered seenBy(Actor actor) {
    return new Registered(
        id(), variantKey, modelYear, seriesKey, serial, registration, isOwnedBy(actor), shared);
  }
}
