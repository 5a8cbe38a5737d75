package club.yearline.estimation;

import club.yearline.effectivity.Serial;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What was seen on an airframe on a day.
 *
 * @param airframe what tells the airframe apart from others
 * @param series key of the series of its serial; null where no serial is known
 * @param serial its serial; null where none is known
 * @param shows what the value seen says about the change
 * @param on the day; of several observations of an airframe on its last day, the later listed
 *     counts
 */
public record Observed(
    String airframe, @Nullable String series, @Nullable Serial serial, Shows shows, LocalDate on) {}
