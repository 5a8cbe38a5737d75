package club.yearline.estimation;

/**
 * An airframe whose value contradicts where it stands: probably an exchanged part.
 *
 * @param sighting the airframe
 * @param chance the chance of that over both models
 */
public record Suspect(Sighting sighting, double chance) {}
