package club.yearline.fleet;

import java.util.List;

/**
 * What a published correction stands on, for one change and variant: all that remains of an
 * observation once its airframe is deleted.
 *
 * @param showsNew whether the airframe had a value of the change's offering, else one from before
 * @param place where its serial lay
 * @param kept whether the observation is still in the register
 */
public record UsedObservation(boolean showsNew, Place place, boolean kept) {

  /** Where a serial lies to the window that a correction proposes. */
  public enum Place {
    /** Before the window. */
    BELOW,
    /** Within it. */
    INSIDE,
    /** Past it. */
    ABOVE
  }

  /**
   * An observation that a correction is to stand on.
   *
   * @param observation its number, from {@link Sighting#observation}
   * @param showsNew as above
   * @param place as above
   */
  public record Use(long observation, boolean showsNew, Place place) {}

  /** Those used for one change of one variant. */
  public record Uses(String change, String variant, List<Use> uses) {

    public Uses {
      uses = List.copyOf(uses);
    }
  }
}
