package club.yearline.expected;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Family;
import club.yearline.web.Choice;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The variants that a form offers, by family. Empty where there are too many for a menu; the form
 * then takes the designation as text.
 */
public record VariantMenu(List<FamilyMenu> families) {

  /** More would make every page heavy, and no menu of that length is pleasant. */
  private static final int MOST = 80;

  /** The variants of one family. */
  public record FamilyMenu(String name, List<Choice> variants) {}

  /** The variants of one family, or of all. */
  public static VariantMenu of(Catalogue catalogue, @Nullable String family) {
    List<Family> families =
        family == null
            ? catalogue.records().families()
            : catalogue.family(family).stream().toList();
    if (family == null && catalogue.records().variants().size() > MOST) {
      return new VariantMenu(List.of());
    }
    return new VariantMenu(families.stream().map(f -> menu(catalogue, f)).toList());
  }

  private static FamilyMenu menu(Catalogue catalogue, Family family) {
    return new FamilyMenu(
        family.name(),
        catalogue.variantsOf(family.key()).stream()
            .map(v -> new Choice(v.key(), v.designation()))
            .toList());
  }
}
