package club.yearline.corrections;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The files of all corrections. */
interface CorrectionFiles extends Repository<CorrectionFile, Long> {

  CorrectionFile save(CorrectionFile file);

  void delete(CorrectionFile file);

  Optional<CorrectionFile> findByIdAndCorrectionId(long id, long correction);

  List<CorrectionFile> findByCorrectionIdAndPurposeOrderById(
      long correction, CorrectionFile.Purpose purpose);

  /** What is there, without the content. */
  @Query(
      """
      select new club.yearline.corrections.FileLine(f.id, f.name, f.mediaType, f.size, f.sha256)
      from CorrectionFile f
      where f.correctionId = :correction and f.purpose = :purpose order by f.id
      """)
  List<FileLine> list(long correction, CorrectionFile.Purpose purpose);
}
