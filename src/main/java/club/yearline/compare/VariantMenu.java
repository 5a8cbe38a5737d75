package club.yearline.compare;

import club.yearline.effectivity.Catalogue;
import club.yearline.web.Choice;
import java.util.List;

/**
 * The variants that the form offers, by family. Empty where there are too many for a menu; the form
 * then takes the designation as text.
 */
public record VariantMenu(List<FamilyVariants> families) {

  private static final int MOST = 80;

  /** The variants of one family. */
  public record FamilyVariants(String name, List<Choice> variants) {}

  static VariantMenu of(Catalogue catalogue) {
    if (catalogue.records().variants().size() > MOST) {
      return new VariantMenu(List.of());
    }
    return new VariantMenu(
        catalogue.records().families().stream()
            .map(
                f ->
                    new FamilyVariants(
                        f.name(),
                        catalogue.variantsOf(f.key()).stream()
                            .map(v -> new Choice(v.key(), v.designation()))
                            .toList()))
            .toList());
  }
}
