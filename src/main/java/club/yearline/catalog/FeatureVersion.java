package club.yearline.catalog;

import static club.yearline.effectivity.EntryKind.FEATURE;

import club.yearline.effectivity.Exchange;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureKind;
import club.yearline.effectivity.Visibility;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a feature says over a span of revisions. */
@Entity
class FeatureVersion extends Version {

  private String name;
  private String chapter;

  @Enumerated(EnumType.STRING)
  private FeatureKind kindOfValue;

  private @Nullable String unit;

  @Enumerated(EnumType.STRING)
  private Visibility visibility;

  @Enumerated(EnumType.STRING)
  private Exchange exchange;

  private @Nullable String description;

  @ElementCollection
  @CollectionTable(name = "feature_value", joinColumns = @JoinColumn(name = "version_id"))
  @OrderColumn(name = "position")
  private List<ValuePart> values;

  @ElementCollection
  @CollectionTable(name = "feature_citation", joinColumns = @JoinColumn(name = "version_id"))
  @OrderColumn(name = "position")
  private List<CitationPart> citations;

  protected FeatureVersion() {}

  private FeatureVersion(Feature feature, EntryIds ids, int since) {
    super(ids.id(FEATURE, feature.key()), since);
    name = feature.name();
    chapter = feature.chapter();
    kindOfValue = feature.kindOfValue();
    unit = feature.unit();
    visibility = feature.visibility();
    exchange = feature.exchange();
    description = feature.description();
    values = feature.values().stream().map(ValuePart::of).toList();
    citations = CitationPart.of(feature, ids);
  }

  static FeatureVersion of(Feature feature, EntryIds ids, int since) {
    return new FeatureVersion(feature, ids, since);
  }

  @Override
  Feature toEntry(Sweep sweep) {
    return new Feature(
        sweep.key(entryId()),
        name,
        sweep.text(chapter),
        kindOfValue,
        sweep.textOrNull(unit),
        visibility,
        exchange,
        description,
        sweep.parts(this, "values", ValuePart.class, v -> v.toValue(sweep)),
        sweep.citations(this));
  }
}
