package club.yearline.fleet;

import club.yearline.effectivity.Catalogue;
import club.yearline.fleet.FleetView.FamilyChoices;
import club.yearline.web.Choice;
import java.util.List;

/** The variants that a form offers, by family. */
final class VariantChoices {

  /** More would make the page heavy, and no menu of that length is pleasant. */
  private static final int MOST = 80;

  private VariantChoices() {}

  /** Empty where there are too many for a menu; the form then takes the designation as text. */
  static List<FamilyChoices> of(Catalogue catalogue) {
    if (catalogue.records().variants().size() > MOST) {
      return List.of();
    }
    return catalogue.records().families().stream()
        .map(
            f ->
                new FamilyChoices(
                    f.name(),
                    catalogue.variantsOf(f.key()).stream()
                        .map(v -> new Choice(v.key(), v.designation()))
                        .toList()))
        .toList();
  }
}
