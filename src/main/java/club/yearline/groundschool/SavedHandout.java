package club.yearline.groundschool;

import java.time.Instant;
import java.time.ZoneOffset;

/**
 * A hand-out that a member has kept.
 *
 * @param id its number
 * @param person whose it is
 * @param choice what it shows
 * @param revision the revision that it was made at
 * @param savedAt when it was kept, or brought up to date
 */
record SavedHandout(long id, long person, Handout choice, int revision, Instant savedAt) {

  /**
   * One in a list.
   *
   * @param name its title, or what stands for one
   * @param day when it was kept
   */
  record Line(long id, String name, int revision, String day) {}

  /** It as lists show it. */
  Line line(String untitled) {
    return new Line(
        id,
        choice.title().isEmpty() ? untitled : choice.title(),
        revision,
        savedAt.atZone(ZoneOffset.UTC).toLocalDate().toString());
  }
}
