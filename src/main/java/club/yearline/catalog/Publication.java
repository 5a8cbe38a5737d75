package club.yearline.catalog;

import org.springframework.stereotype.Component;

/** Publishes editions, one revision each. */
@Component
public class Publication {

  /**
   * Publishes an edition as the next revision, wholly or not at all.
   *
   * @throws RefusedPublication if the resulting records have errors
   */
  public Revision publish(Edition edition) {
    throw new UnsupportedOperationException("storage follows");
  }
}
