package club.yearline.catalog;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** All pictures, as all revisions have them. */
interface PictureVersions extends Repository<PictureVersion, Long> {

  @Query(
      "select v from PictureVersion v"
          + " where v.sinceRevision <= :revision and :revision < v.untilRevision order by v.name")
  List<PictureVersion> at(int revision);

  /** The newest of those with the given content. */
  Optional<PictureVersion> findFirstBySha256OrderBySinceRevisionDesc(String sha256);

  @Modifying
  @Query(
      "update PictureVersion v set v.untilRevision = :revision"
          + " where v.untilRevision = 2147483647 and v.name in :names")
  void close(Collection<String> names, int revision);
}
