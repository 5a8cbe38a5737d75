package club.yearline.effectivity;

import club.yearline.citation.Citation;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One thing that may differ between airframes: a part, a shape, a system, a figure.
 *
 * @param key stable key
 * @param name what it is called
 * @param chapter ATA/JASC chapter, two digits
 * @param kindOfValue choice of values, or a number
 * @param unit unit of a number feature
 * @param visibility from where it can be seen
 * @param exchange how readily it is exchanged in service
 * @param description plain text
 * @param values the values of a choice feature
 * @param citations its citations
 */
public record Feature(
    String key,
    String name,
    String chapter,
    FeatureKind kindOfValue,
    @Nullable String unit,
    Visibility visibility,
    Exchange exchange,
    @Nullable String description,
    List<FeatureValue> values,
    List<Citation> citations)
    implements Entry {

  public Feature {
    values = List.copyOf(values);
    citations = List.copyOf(citations);
  }

  @Override
  public EntryKind kind() {
    return EntryKind.FEATURE;
  }

  /** Whether its values are numbers. */
  public boolean isNumber() {
    return kindOfValue == FeatureKind.NUMBER;
  }

  /** The value with the given key; empty for a number feature or an unknown key. */
  public Optional<FeatureValue> value(String valueKey) {
    for (FeatureValue value : values) {
      if (value.key().equals(valueKey)) {
        return Optional.of(value);
      }
    }
    return Optional.empty();
  }
}
