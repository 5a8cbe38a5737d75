package club.yearline.corrections;

import jakarta.persistence.LockModeType;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** All corrections. */
interface Corrections extends Repository<Correction, Long> {

  /** Writes what has changed, so that it is known whether somebody else was faster. */
  void flush();

  /** Stores a new correction. */
  Correction saveAndFlush(Correction correction);

  Optional<Correction> findById(long id);

  /** A correction that nobody else can change before this transaction ends. */
  @Lock(LockModeType.PESSIMISTIC_WRITE)
  @Query("select c from Correction c where c.id = :id")
  Optional<Correction> hold(long id);

  Optional<Correction> findByFormToken(String formToken);

  Optional<Correction> findByRevision(int revision);

  Page<Correction> findByAuthorIdOrderByChangedAtDesc(long author, Pageable page);

  Page<Correction> findByStateOrderBySubmittedAt(State state, Pageable page);

  /** Those that were decided on, the latest first. */
  Page<Correction> findByRevisionNotNullOrStateOrderByDecidedAtDesc(State state, Pageable page);

  /** Those of one author that can still be written in. */
  List<Correction> findByAuthorIdAndStateInOrderByChangedAtDesc(
      long author, Collection<State> states);

  /**
   * Others that wait for a moderator and would change an entry that this one does, oldest first.
   */
  @Query(
      """
      select distinct c from Correction c join c.edits e, Correction own join own.edits m
      where own.id = :id and c.id <> :id
        and c.state = club.yearline.corrections.State.SUBMITTED
        and e.kind = m.kind and e.entryKey = m.entryKey
      order by c.submittedAt
      """)
  List<Correction> waitingBeside(long id);
}
