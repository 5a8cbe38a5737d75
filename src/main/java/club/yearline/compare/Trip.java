package club.yearline.compare;

import org.jspecify.annotations.Nullable;

/**
 * A trip to fly, without wind.
 *
 * @param distance in nautical miles
 * @param reserve in hours, at cruising power
 * @param people how many are aboard, pilot included; null where that is not asked
 * @param peopleWeight what they weigh together, in pounds
 * @param bags what the baggage weighs, in pounds
 */
record Trip(
    Amount distance, Amount reserve, @Nullable Integer people, Amount peopleWeight, Amount bags) {}
