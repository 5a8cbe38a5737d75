package club.yearline.catalog;

import static club.yearline.effectivity.EntryKind.FAMILY;
import static club.yearline.effectivity.EntryKind.VARIANT;

import club.yearline.effectivity.Variant;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a variant says over a span of revisions. */
@Entity
class VariantVersion extends Version {

  private long familyId;
  private String designation;
  private @Nullable String picture;
  private @Nullable String summary;

  @ElementCollection
  @CollectionTable(name = "sold_name", joinColumns = @JoinColumn(name = "version_id"))
  @OrderColumn(name = "position")
  private List<SoldNamePart> names;

  @ElementCollection
  @CollectionTable(name = "production_run", joinColumns = @JoinColumn(name = "version_id"))
  @OrderColumn(name = "position")
  private List<RunPart> runs;

  @ElementCollection
  @CollectionTable(name = "descent", joinColumns = @JoinColumn(name = "version_id"))
  @OrderColumn(name = "position")
  private List<DescentPart> descent;

  @ElementCollection
  @CollectionTable(name = "variant_citation", joinColumns = @JoinColumn(name = "version_id"))
  @OrderColumn(name = "position")
  private List<CitationPart> citations;

  protected VariantVersion() {}

  private VariantVersion(Variant variant, EntryIds ids, int since) {
    super(ids.id(VARIANT, variant.key()), since);
    familyId = ids.id(FAMILY, variant.family());
    designation = variant.designation();
    picture = variant.picture();
    summary = variant.summary();
    names = variant.names().stream().map(SoldNamePart::of).toList();
    runs = variant.runs().stream().map(RunPart::of).toList();
    descent = variant.descent().stream().map(d -> DescentPart.of(d, ids)).toList();
    citations = CitationPart.of(variant, ids);
  }

  static VariantVersion of(Variant variant, EntryIds ids, int since) {
    return new VariantVersion(variant, ids, since);
  }

  @Override
  Variant toEntry(Sweep sweep) {
    return new Variant(
        sweep.key(entryId()),
        sweep.key(familyId),
        designation,
        picture,
        summary,
        sweep.parts(this, "names", SoldNamePart.class, SoldNamePart::toName),
        sweep.parts(this, "runs", RunPart.class, RunPart::toRun),
        sweep.parts(this, "descent", DescentPart.class, d -> d.toDescent(sweep)),
        sweep.citations(this));
  }
}
