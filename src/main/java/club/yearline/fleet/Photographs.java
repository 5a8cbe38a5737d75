package club.yearline.fleet;

import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** All photographs of the register. */
interface Photographs extends Repository<Photograph, Long> {

  Photograph save(Photograph photograph);

  void delete(Photograph photograph);

  /** A photograph of an airframe. */
  @Query(
      """
      select p from Photograph p, Observation o
      where p.id = :id and o.id = p.observationId and o.airframeId = :airframe
      """)
  Optional<Photograph> ofAirframe(long id, long airframe);

  /** The photographs of an airframe, without their content. */
  @Query(
      """
      select new club.yearline.fleet.PhotographLine(p.id, p.observationId, p.name)
      from Photograph p, Observation o
      where o.id = p.observationId and o.airframeId = :airframe order by p.id
      """)
  List<PhotographLine> list(long airframe);

  /** Photographs of an airframe's observations whose form's token is like a pattern. */
  @Query(
      """
      select new club.yearline.fleet.PhotographOf(o.featureKey, p.sha256, p.bytes)
      from Photograph p, Observation o
      where o.id = p.observationId and o.airframeId = :airframe and o.formToken like :tokens
      order by p.id
      """)
  List<PhotographOf> ofTokens(long airframe, String tokens, Limit limit);
}
