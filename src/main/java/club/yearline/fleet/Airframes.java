package club.yearline.fleet;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** All airframes of the register. */
interface Airframes extends Repository<Airframe, Long> {

  /** Stores a new airframe. */
  Airframe saveAndFlush(Airframe airframe);

  /** Stores many new airframes. */
  List<Airframe> saveAll(Iterable<Airframe> airframes);

  long count();

  /** Writes what has changed, so that it is known whether somebody else was faster. */
  void flush();

  /** Takes an airframe out, with all that was seen on it. */
  void delete(Airframe airframe);

  Optional<Airframe> findById(long id);

  List<Airframe> findByOwnerIdOrderById(long owner);

  Optional<Airframe> findByOwnerIdAndFormToken(long owner, String formToken);

  /** The airframe of one owner that bears a serial. */
  Optional<Airframe> findByOwnerIdAndSeriesKeyAndSerialOrdinalAndSerialSuffix(
      long owner, String series, long ordinal, String suffix);

  /** What a person may see: own airframes, and those that others share. */
  @Query("select a from Airframe a where a.ownerId = :person or a.shared order by a.id")
  List<Airframe> visibleTo(long person);

  /** Likewise, by the mark without its dash. */
  @Query(
      """
      select a from Airframe a
      where a.registrationKey = :key and (a.ownerId = :person or a.shared) order by a.id
      """)
  List<Airframe> visibleByMark(long person, String key);
}
