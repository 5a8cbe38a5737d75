package club.yearline.estimation;

import club.yearline.effectivity.Serial;

/**
 * An airframe that counts for an estimate, by what was last seen on it.
 *
 * @param airframe what tells it apart from others
 * @param serial its serial; a letter after the digits does not move it
 * @param isNew whether the new value was seen, not the old one
 * @param exchange chance that the part seen is not the one it left the factory with; above 0, below
 *     1
 */
public record Sighting(String airframe, Serial serial, boolean isNew, double exchange) {

  public Sighting {
    if (!(exchange > 0 && exchange < 1)) {
      throw new IllegalArgumentException("An exchange chance of " + exchange + " is none");
    }
  }

  long ordinal() {
    return serial.ordinal();
  }
}
