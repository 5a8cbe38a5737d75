package club.yearline.fleet;

import club.yearline.accounts.Actor;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Fills an empty register with many airframes at once, such as those of the demo. */
@Component
public class RegisterFilling {

  private final Airframes airframes;
  private final Observations observations;

  RegisterFilling(Airframes airframes, Observations observations) {
    this.airframes = airframes;
    this.observations = observations;
  }

  /**
   * An airframe with what was seen on it, without photographs.
   *
   * @param owner who keeps it
   * @param airframe what it is
   * @param shared whether every member may see it
   * @param serialShown whether its serial may be named where it serves as evidence
   * @param seen features and values of the catalogue, which is not checked
   */
  public record Given(
      Actor owner, NewAirframe airframe, boolean shared, boolean serialShown, List<Seen> seen) {

    public Given {
      seen = List.copyOf(seen);
    }
  }

  /**
   * Fills the register, wholly or not at all.
   *
   * @return whether it was filled: not where there is an airframe already
   */
  @Transactional
  public boolean fill(List<Given> all) {
    if (airframes.count() > 0) {
      return false;
    }
    List<Airframe> registered =
        airframes.saveAll(all.stream().map(RegisterFilling::register).toList());
    List<Observation> seen = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      long id = registered.get(i).id();
      all.get(i).seen().forEach(s -> seen.add(Observation.of(id, s, token())));
    }
    observations.saveAll(seen);
    return true;
  }

  private static Airframe register(Given given) {
    Airframe airframe = Airframe.register(given.owner(), given.airframe(), token());
    airframe.share(given.shared());
    airframe.showSerial(given.serialShown());
    return airframe;
  }

  private static String token() {
    return UUID.randomUUID().toString();
  }
}
