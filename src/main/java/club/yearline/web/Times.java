package club.yearline.web;

import java.time.Instant;
import java.time.temporal.ChronoUnit;

/** Moments as pages show them. */
public final class Times {

  private Times() {}

  /** To the minute, in ISO form but for a space between day and time, UTC. */
  public static String minute(Instant time) {
    return time.truncatedTo(ChronoUnit.MINUTES).toString().replace(":00Z", "Z").replace('T', ' ');
  }
}
