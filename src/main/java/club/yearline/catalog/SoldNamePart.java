package club.yearline.catalog;

import club.yearline.effectivity.SoldName;
import jakarta.persistence.Embeddable;
import org.jspecify.annotations.Nullable;

/** A name that a variant was sold under, within a version. */
@Embeddable
record SoldNamePart(String name, @Nullable Integer firstYear, @Nullable Integer lastYear) {

  static SoldNamePart of(SoldName sold) {
    return new SoldNamePart(sold.name(), sold.firstYear(), sold.lastYear());
  }

  SoldName toName() {
    return new SoldName(name, firstYear, lastYear);
  }
}
