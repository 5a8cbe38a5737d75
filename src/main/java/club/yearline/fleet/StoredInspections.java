package club.yearline.fleet;

import club.yearline.accounts.Actor;
import club.yearline.web.Refusal;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** StoredInspections that were stored, each once. */
@Component
class StoredInspections {

  private final JdbcClient jdbc;
  private final Keeping keeping;
  private final Observing observing;

  StoredInspections(JdbcClient jdbc, Keeping keeping, Observing observing) {
    this.jdbc = jdbc;
    this.keeping = keeping;
    this.observing = observing;
  }

  Optional<Long> stored(Actor actor, UUID id) {
    List<@Nullable Long> found =
        jdbc.sql("select airframe_id from stored_inspection where person_id = :p and id = :id")
            .param("p", actor.id())
            .param("id", id)
            .query((row, n) -> row.getObject("airframe_id", Long.class))
            .list();
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Long airframe = found.get(0);
    if (airframe == null) {
      throw Refusal.of(HttpStatus.GONE, "inspection-gone");
    }
    return Optional.of(airframe);
  }

  /** The first row that is written is its number, on which a second sending must wait. */
  @Transactional
  public long store(Actor actor, Inspected inspected) {
    jdbc.sql("insert into stored_inspection (person_id, id, stored_at) values (:p, :id, :at)")
        .param("p", actor.id())
        .param("id", inspected.id())
        .param("at", OffsetDateTime.now(ZoneOffset.UTC))
        .update();
    long airframe = airframe(actor, inspected);
    for (int i = 0; i < inspected.seen().size(); i++) {
      observing.observe(actor, airframe, inspected.seen().get(i), inspected.id() + "-" + i);
    }
    jdbc.sql("update stored_inspection set airframe_id = :a where person_id = :p and id = :id")
        .param("a", airframe)
        .param("p", actor.id())
        .param("id", inspected.id())
        .update();
    return airframe;
  }

  /** Forgets the numbers of a person's inspections. */
  void forget(long person) {
    jdbc.sql("delete from stored_inspection where person_id = :p").param("p", person).update();
  }

  private long airframe(Actor actor, Inspected inspected) {
    if (inspected.airframe() != null) {
      return keeping.own(actor, inspected.airframe()).id();
    }
    NewAirframe fresh = Objects.requireNonNull(inspected.fresh());
    return keeping
        .ofSerial(actor, fresh.position())
        .orElseGet(() -> keeping.register(actor, fresh, inspected.id().toString()))
        .id();
  }
}
