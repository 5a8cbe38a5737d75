package club.yearline.fleet;

import club.yearline.web.Choice;
import club.yearline.web.Pages;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The register as somebody may see it.
 *
 * @param rows the airframes of this page
 * @param size how many there are, in words
 * @param revision number of the revision that they are compared with
 * @param pages the pages of the list
 * @param choices families and variants to choose from
 * @param of what was chosen; empty for all
 * @param differing whether only those that differ are listed
 * @param any whether there is anything at all, whatever was chosen
 */
public record FleetView(
    List<FleetRow> rows,
    String size,
    String revision,
    Pages pages,
    List<FamilyChoices> choices,
    String of,
    boolean differing,
    boolean any) {

  /** A family and its variants. */
  public record FamilyChoices(String name, List<Choice> choices) {}

  /**
   * An airframe.
   *
   * @param href its page
   * @param registration its mark; null where none is known
   * @param serial its serial; likewise
   * @param name what else to call it, where it has neither
   * @param variant designation of its variant
   * @param year its year; empty where it is not known
   * @param seen the day on which somebody looked last; null where nobody has
   * @param looked how many features were looked at, in words
   * @param own whether it is the reader's own
   * @param shared whether every member may see it
   * @param differences where it differs from how it was built
   */
  public record FleetRow(
      String href,
      @Nullable String registration,
      @Nullable String serial,
      @Nullable String name,
      String variant,
      String year,
      @Nullable String seen,
      String looked,
      boolean own,
      boolean shared,
      List<Spot> differences) {}

  /** A feature in which it differs, and how: {@code differs} or {@code retrofit}. */
  public record Spot(String name, String href, String match) {}
}
