package club.yearline.catalog;

import club.yearline.effectivity.FeatureValue;
import jakarta.persistence.Embeddable;
import org.jspecify.annotations.Nullable;

/** A value of a feature, within a version. */
@Embeddable
record ValuePart(
    String valueKey,
    String label,
    @Nullable String cue,
    @Nullable String picture,
    @Nullable String pictureCredit) {

  static ValuePart of(FeatureValue value) {
    return new ValuePart(
        value.key(), value.label(), value.cue(), value.picture(), value.pictureCredit());
  }

  FeatureValue toValue(Sweep sweep) {
    return new FeatureValue(sweep.text(valueKey), label, cue, picture, pictureCredit);
  }
}
