package club.yearline.fleet;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A value seen on an airframe on a date. It is never changed, only followed by a later one. */
@Entity
class Observation {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "observation_seq")
  @SequenceGenerator(name = "observation_seq", sequenceName = "observation_seq")
  private @Nullable Long id;

  private long airframeId;
  private String featureKey;
  private String seenValue;
  private LocalDate seenOn;
  private @Nullable String observer;
  private @Nullable String note;
  private Instant recordedAt;
  private String formToken;

  protected Observation() {}

  /**
   * Records what was seen.
   *
   * @param token of the form, unique within the airframe
   */
  static Observation of(long airframe, Seen seen, String token) {
    Observation observation = new Observation();
    observation.airframeId = airframe;
    observation.featureKey = seen.feature();
    observation.seenValue = seen.value();
    observation.seenOn = seen.on();
    observation.observer = seen.observer();
    observation.note = seen.note();
    observation.recordedAt = Instant.now().truncatedTo(ChronoUnit.MICROS);
    observation.formToken = token;
    return observation;
  }

  long id() {
    return Objects.requireNonNull(id);
  }

  long airframe() {
    return airframeId;
  }

  String feature() {
    return featureKey;
  }

  /** A value key of the feature, or a number in its unit. */
  String value() {
    return seenValue;
  }

  LocalDate on() {
    return seenOn;
  }

  /** Who looked; null where that was the owner. */
  @Nullable String observer() {
    return observer;
  }

  @Nullable String note() {
    return note;
  }
}
