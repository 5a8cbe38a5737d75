package club.yearline.catalog;

import static club.yearline.effectivity.EntryKind.CHANGE;
import static club.yearline.effectivity.EntryKind.FEATURE;

import club.yearline.effectivity.Change;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a change says over a span of revisions. */
@Entity
class ChangeVersion extends Version {

  private long featureId;
  private String title;
  private @Nullable String detail;

  @ElementCollection
  @CollectionTable(name = "offered", joinColumns = @JoinColumn(name = "version_id"))
  @OrderColumn(name = "position")
  private List<OfferedPart> offering;

  @ElementCollection
  @CollectionTable(name = "cut_in", joinColumns = @JoinColumn(name = "version_id"))
  @OrderColumn(name = "position")
  private List<CutInPart> cutIns;

  @ElementCollection
  @CollectionTable(name = "change_citation", joinColumns = @JoinColumn(name = "version_id"))
  @OrderColumn(name = "position")
  private List<CitationPart> citations;

  protected ChangeVersion() {}

  private ChangeVersion(Change change, EntryIds ids, int since) {
    super(ids.id(CHANGE, change.key()), since);
    featureId = ids.id(FEATURE, change.feature());
    title = change.title();
    detail = change.detail();
    offering = change.offering().stream().map(OfferedPart::of).toList();
    cutIns = change.cutIns().stream().map(c -> CutInPart.of(c, ids)).toList();
    citations = CitationPart.of(change, ids);
  }

  static ChangeVersion of(Change change, EntryIds ids, int since) {
    return new ChangeVersion(change, ids, since);
  }

  @Override
  Change toEntry(Sweep sweep) {
    return new Change(
        sweep.key(entryId()),
        sweep.key(featureId),
        sweep.text(title),
        detail,
        sweep.parts(this, "offering", OfferedPart.class, o -> o.toOffered(sweep)),
        sweep.parts(this, "cutIns", CutInPart.class, c -> c.toCutIn(sweep)),
        sweep.citations(this));
  }
}
