package club.yearline.catalog;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** All revisions. */
interface Revisions extends Repository<PublishedRevision, Integer> {

  /** The number of the newest revision; 0 where nothing is published. */
  @Query("select h.number from Head h")
  int newest();

  /** Moves the head on, which keeps every other publication waiting until this one has ended. */
  @Modifying
  @Query("update Head h set h.number = h.number + 1")
  void advance();

  PublishedRevision saveAndFlush(PublishedRevision revision);

  Optional<PublishedRevision> findByNumber(int number);

  List<PublishedRevision> findAllByOrderByNumberDesc();

  List<PublishedRevision> findByNumberInOrderByNumberDesc(Collection<Integer> numbers);
}
