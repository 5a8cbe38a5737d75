package club.yearline.fleet;

import org.jspecify.annotations.Nullable;

/**
 * An airframe of the register as somebody may see it.
 *
 * @param id its number, by which {@code /fleet/ID} shows it
 * @param variant key of its variant
 * @param year model year or year of manufacture; null where it is not known
 * @param series key of the series of its serial; null where no serial is known
 * @param serial the serial as stamped; likewise
 * @param registration its mark; null where none is known
 * @param own whether it belongs to whoever asks
 * @param shared whether every member may see it
 */
public record Registered(
    long id,
    String variant,
    @Nullable Integer year,
    @Nullable String series,
    @Nullable String serial,
    @Nullable String registration,
    boolean own,
    boolean shared) {}
