package club.yearline.inspection;

import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Retrofit;

/**
 * A mandatory retrofit that a position calls for.
 *
 * @param retrofit the retrofit
 * @param feature the feature that it changes
 * @param shown whether the airframe was seen to have it
 */
public record CalledFor(Retrofit retrofit, Feature feature, Shown shown) {

  /** Whether an airframe was seen to have what is called for. */
  public enum Shown {
    SHOWN,
    NOT_SHOWN,
    NOT_LOOKED_AT
  }
}
