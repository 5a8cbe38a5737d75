package club.yearline.catalog;

import static club.yearline.effectivity.EntryKind.FAMILY;

import club.yearline.effectivity.Family;
import club.yearline.effectivity.YearMeaning;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.Convert;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a family says over a span of revisions. */
@Entity
class FamilyVersion extends Version {

  private String maker;
  private String name;
  private @Nullable String typeCertificate;

  @Enumerated(EnumType.STRING)
  private YearMeaning yearMeans;

  @Convert(converter = AsRecorded.class)
  private @Nullable BigDecimal fuelDensity;

  private @Nullable String summary;

  @ElementCollection
  @CollectionTable(name = "family_citation", joinColumns = @JoinColumn(name = "version_id"))
  @OrderColumn(name = "position")
  private List<CitationPart> citations;

  protected FamilyVersion() {}

  private FamilyVersion(Family family, EntryIds ids, int since) {
    super(ids.id(FAMILY, family.key()), since);
    maker = family.maker();
    name = family.name();
    typeCertificate = family.typeCertificate();
    yearMeans = family.yearMeans();
    fuelDensity = family.fuelDensity();
    summary = family.summary();
    citations = CitationPart.of(family, ids);
  }

  static FamilyVersion of(Family family, EntryIds ids, int since) {
    return new FamilyVersion(family, ids, since);
  }

  @Override
  Family toEntry(Sweep sweep) {
    return new Family(
        sweep.key(entryId()),
        sweep.text(maker),
        name,
        typeCertificate,
        yearMeans,
        fuelDensity,
        summary,
        sweep.citations(this));
  }
}
