package club.yearline.compare;

import club.yearline.catalog.Links;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.springframework.web.util.UriUtils;

/**
 * An address of the page: it holds all that the page answers from.
 *
 * @param chosen the variant-years
 * @param units the units shown
 * @param trip the trip as typed
 */
record Address(List<Chosen> chosen, UnitSystem units, TripForm trip) {

  Address {
    chosen = List.copyOf(chosen);
  }

  /** The same in other units. */
  Address in(UnitSystem other) {
    return new Address(chosen, other, trip);
  }

  /** The same with one variant-year more. */
  Address with(Chosen more) {
    List<Chosen> all = new ArrayList<>(chosen);
    if (!all.contains(more)) {
      all.add(more);
    }
    return new Address(all, units, trip);
  }

  /** The same without one of the variant-years. */
  Address without(Chosen one) {
    return new Address(chosen.stream().filter(c -> !c.equals(one)).toList(), units, trip);
  }

  /** The path within the application, without revision. */
  String path() {
    StringBuilder path = new StringBuilder("/compare");
    chosen.forEach(c -> add(path, "v", c.inAddress()));
    if (units != UnitSystem.RECORDED) {
      add(path, "units", units.code());
    }
    for (Map.Entry<String, String> entry : trip.inAddress().entrySet()) {
      add(path, entry.getKey(), UriUtils.encode(entry.getValue(), StandardCharsets.UTF_8));
    }
    return path.toString();
  }

  String link(Links links) {
    return links.at(path());
  }

  private static void add(StringBuilder path, String name, String encoded) {
    path.append(path.indexOf("?") < 0 ? '?' : '&').append(name).append('=').append(encoded);
  }
}
