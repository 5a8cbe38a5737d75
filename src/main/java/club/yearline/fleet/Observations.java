package club.yearline.fleet;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

/** Everything that was seen on airframes. */
interface Observations extends Repository<Observation, Long> {

  Observation saveAndFlush(Observation observation);

  /** Stores many new observations. */
  List<Observation> saveAll(Iterable<Observation> observations);

  void delete(Observation observation);

  /** What was seen on an airframe, the latest first. */
  List<Observation> findByAirframeIdOrderBySeenOnDescIdDesc(long airframe);

  List<Observation> findByAirframeIdInOrderBySeenOnDescIdDesc(Collection<Long> airframes);

  Optional<Observation> findByIdAndAirframeId(long id, long airframe);

  Optional<Observation> findByAirframeIdAndFormToken(long airframe, String formToken);

  long countByAirframeId(long airframe);
}
