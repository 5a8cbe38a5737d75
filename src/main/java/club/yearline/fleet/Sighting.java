package club.yearline.fleet;

import club.yearline.accounts.Actor;
import club.yearline.effectivity.Serial;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What an airframe showed of a feature when it was last looked at. It may be anybody's, private
 * ones included: count it, but name its serial and lead to it only where {@link #mayBeNamed} says
 * so. What is computed from serials may name those of the catalogue.
 *
 * @param observation number of the observation, for {@link Sightings#use}
 * @param airframe number of the airframe
 * @param owner number of the account that keeps it; never to be shown
 * @param variant key of its variant
 * @param year its year; null where it is not known
 * @param series key of the series
 * @param serial the serial
 * @param serialText the serial as stamped
 * @param serialShown whether everybody who registered this airframe lets its serial be named
 * @param value key of the value seen, or a number
 * @param on the day it was seen
 */
public record Sighting(
    long observation,
    long airframe,
    long owner,
    String variant,
    @Nullable Integer year,
    String series,
    Serial serial,
    String serialText,
    boolean serialShown,
    String value,
    LocalDate on) {

  /** Whether a reader may be told which airframe it was; null for a visitor. */
  public boolean mayBeNamed(@Nullable Actor reader) {
    return serialShown || (reader != null && reader.id() == owner);
  }
}
