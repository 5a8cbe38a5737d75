package club.yearline.effectivity;

import club.yearline.citation.Citation;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The variants that share one type certificate or one line of descent.
 *
 * @param key stable key
 * @param maker company that built it
 * @param name name of the family
 * @param typeCertificate number of its type certificate
 * @param yearMeans what a year is in this family
 * @param fuelDensity pounds per US gallon; null stands for 6.0
 * @param summary plain text
 * @param citations its citations
 */
public record Family(
    String key,
    String maker,
    String name,
    @Nullable String typeCertificate,
    YearMeaning yearMeans,
    @Nullable BigDecimal fuelDensity,
    @Nullable String summary,
    List<Citation> citations)
    implements Entry {

  public Family {
    citations = List.copyOf(citations);
  }

  @Override
  public EntryKind kind() {
    return EntryKind.FAMILY;
  }
}
