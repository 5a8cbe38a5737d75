package club.yearline.corrections;

import club.yearline.catalog.Edition;
import club.yearline.catalog.FindingsOf;
import club.yearline.catalog.PictureFile;
import club.yearline.catalog.Snapshot;
import club.yearline.catalog.Snapshots;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Finding;
import club.yearline.effectivity.Findings;
import club.yearline.effectivity.Records;
import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/**
 * Works out what corrections would make of the catalogue. That looks at the whole of it, so the
 * last few are kept, for as long as neither correction nor catalogue moves on.
 */
@Component
class Reviews {

  private static final int KEPT = 16;

  private record Asked(long correction, int version, int onto) {}

  private final Snapshots snapshots;
  private final FindingsOf findings;
  private final CorrectionFiles files;
  private final Cache<Asked, Review> kept = Caffeine.newBuilder().maximumSize(KEPT).build();

  Reviews(Snapshots snapshots, FindingsOf findings, CorrectionFiles files) {
    this.snapshots = snapshots;
    this.findings = findings;
    this.files = files;
  }

  /** What a correction would make of the newest state. */
  Review of(Correction correction) {
    Snapshot newest = snapshots.head();
    Asked asked = new Asked(correction.id(), correction.version(), newest.number());
    Review known = kept.getIfPresent(asked);
    if (known == null) {
      known = work(correction, newest);
      kept.put(asked, known);
    }
    return known;
  }

  /** What proposals, not stored yet, would make of the newest state entry by entry. */
  Candidate candidate(List<Proposal> proposals, List<Ground> grounds) {
    return candidate(proposals, grounds, snapshots.head());
  }

  private Candidate candidate(List<Proposal> proposals, List<Ground> grounds, Snapshot newest) {
    return new Candidate.Maker(newest, snapshots::at).make(proposals, grounds);
  }

  /** What would be published; without names. */
  Edition edition(Correction correction, Candidate candidate) {
    List<PictureFile> pictures =
        files
            .findByCorrectionIdAndPurposeOrderById(correction.id(), CorrectionFile.Purpose.PICTURE)
            .stream()
            .map(CorrectionFile::toPicture)
            .toList();
    return candidate.edition(correction.title()).withPictures(pictures);
  }

  private Review work(Correction correction, Snapshot newest) {
    Candidate candidate = candidate(correction.proposals(), correction.grounds(), newest);
    Catalogue before = newest.catalogue();
    if (candidate.isBlocked()) {
      return new Review(
          newest.number(),
          before,
          candidate,
          Optional.empty(),
          Optional.empty(),
          List.of(),
          List.of());
    }
    Records records = edition(correction, candidate).after(before.records());
    List<Finding> old = findings.all(before);
    List<Finding> now = Findings.in(records);
    boolean sound = now.stream().noneMatch(Finding::isError);
    return new Review(
        newest.number(),
        before,
        candidate,
        Optional.of(records),
        sound ? Optional.of(before.next(records)) : Optional.empty(),
        without(now, old),
        without(old, now));
  }

  private static List<Finding> without(List<Finding> findings, List<Finding> others) {
    var known = new HashSet<>(others);
    return findings.stream().filter(f -> !known.contains(f)).toList();
  }
}
