package club.yearline.catalog;

import club.yearline.effectivity.ProductionRun;
import jakarta.persistence.Embeddable;
import org.jspecify.annotations.Nullable;

/** A production run within a version. */
@Embeddable
record RunPart(int firstYear, @Nullable Integer lastYear, @Nullable Integer built) {

  static RunPart of(ProductionRun run) {
    return new RunPart(run.firstYear(), run.lastYear(), run.built());
  }

  ProductionRun toRun() {
    return new ProductionRun(firstYear, lastYear, built);
  }
}
