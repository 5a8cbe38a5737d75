package club.yearline.compare;

import club.yearline.catalog.Links;
import club.yearline.web.Choice;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The form, as it was filled in, and the page in other units.
 *
 * @param action where it is sent
 * @param rows the variant-years, with at least one row to fill in where there is room
 * @param menu the variants to choose from
 * @param trip the trip
 * @param reserves the reserves to choose from
 * @param families the families to rank among
 * @param units the units shown
 * @param switches links to other units
 */
public record Ask(
    String action,
    List<Chosen> rows,
    VariantMenu menu,
    TripForm trip,
    List<Choice> reserves,
    List<Choice> families,
    String units,
    List<UnitLink> switches) {

  private static final int FEWEST = 2;

  /**
   * A link to the same page in other units.
   *
   * @param code the end of the key of its name
   * @param href where it leads
   * @param here whether the page shows these units
   */
  public record UnitLink(String code, String href, boolean here) {}

  static Ask of(Links links, Phrases phrases, Address address) {
    return new Ask(
        links.root() + "/compare",
        rows(address.chosen()),
        VariantMenu.of(links.reading().catalogue()),
        address.trip(),
        Stream.of("day", TripForm.NIGHT, TripForm.OWN)
            .map(r -> new Choice(r, phrases.of("compare.reserve." + r)))
            .toList(),
        Suits.families(links.reading().catalogue(), phrases),
        address.units().code(),
        Stream.of(UnitSystem.values())
            .map(u -> new UnitLink(u.code(), address.in(u).link(links), u == address.units()))
            .toList());
  }

  private static List<Chosen> rows(List<Chosen> chosen) {
    List<Chosen> rows = new ArrayList<>(chosen.stream().limit(Choosing.MOST).toList());
    int wanted = Math.min(Math.max(FEWEST, rows.size() + 1), Choosing.MOST);
    while (rows.size() < wanted) {
      rows.add(Chosen.EMPTY);
    }
    return List.copyOf(rows);
  }
}
