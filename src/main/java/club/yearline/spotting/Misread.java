package club.yearline.spotting;

import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureValue;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Something said to have been seen that cannot be counted, and why. Immutable.
 *
 * @param index which one of all, from 0
 * @param why what is wrong
 * @param text what was given: the feature's key, its value, or the whole
 * @param feature the feature; null where that is what is wrong
 */
public record Misread(int index, Why why, String text, @Nullable Feature feature) {

  /** What can be wrong. */
  public enum Why {
    /** It is not {@code feature:value}. */
    FORM,
    /** There is no feature of that key. */
    FEATURE,
    /** The feature has no such value. */
    VALUE,
    /** The feature is a figure, and this is no number. */
    NUMBER,
    /** The feature was seen before. */
    TWICE,
    /** There are more than are taken at once; those after are not looked at. */
    TOO_MANY;

    private final String code = name().toLowerCase(Locale.ROOT).replace('_', '-');

    /** The word used in keys of messages. */
    public String code() {
      return code;
    }
  }

  /** The keys of the values that the feature has; empty for a figure or no feature. */
  public List<String> known() {
    return feature == null ? List.of() : feature.values().stream().map(FeatureValue::key).toList();
  }

  /** Whether the feature is at fault, not the value. */
  public boolean ofFeature() {
    return why == Why.FEATURE || why == Why.TWICE;
  }
}
