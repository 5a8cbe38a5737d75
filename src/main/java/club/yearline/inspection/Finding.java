package club.yearline.inspection;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Retrofit;
import club.yearline.spotting.Seen;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one observation says of a claim, and why.
 *
 * @param seen the observation
 * @param match how it stands to what is expected
 * @param answer what is expected; null where the feature is none of the variant's
 * @param retrofits for {@link Match#RETROFIT}, the records by which the value may have come
 * @param missing the mandatory retrofits that the position calls for and the observation does not
 *     show
 * @param asBuiltAt where the value is as built, where that is not here
 * @param possibleAt where it is as built on some airframes only or by some records only, where that
 *     is not here
 */
public record Finding(
    Seen seen,
    Match match,
    @Nullable Answer answer,
    List<Retrofit> retrofits,
    List<Retrofit> missing,
    List<Belongs> asBuiltAt,
    List<Belongs> possibleAt) {

  public Finding {
    retrofits = List.copyOf(retrofits);
    missing = List.copyOf(missing);
    asBuiltAt = List.copyOf(asBuiltAt);
    possibleAt = List.copyOf(possibleAt);
  }

  /** The feature looked at. */
  public Feature feature() {
    return seen.feature();
  }
}
