package club.yearline.groundschool;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.OrdinalSpan;
import club.yearline.effectivity.Serial;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.VariantModel;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * Where a cut-in lies in a variant's years, in years and parts of one: a serial as far into its
 * year as its number is into the year's block.
 *
 * @param first where the new one begins; empty where nobody knows
 * @param settled from where on all are new; empty where nobody knows
 */
record CutInPlace(OptionalDouble first, OptionalDouble settled) {

  static CutInPlace of(CutIn cutIn, VariantModel model, Catalogue catalogue) {
    Optional<Series> series = Optional.ofNullable(cutIn.series()).flatMap(catalogue::series);
    return new CutInPlace(
        end(cutIn.firstYear(), cutIn.firstSerial(), series, model),
        end(cutIn.settledYear(), cutIn.settledSerial(), series, model));
  }

  /** Where it is drawn from; empty where nothing tells. */
  OptionalDouble start() {
    return first.isPresent() ? first : settled;
  }

  /** Whether both ends are known and are one. */
  boolean isClean() {
    return first.isPresent() && settled.isPresent() && first.equals(settled);
  }

  /** Whether an end is not known. */
  boolean isOpen() {
    return first.isEmpty() || settled.isEmpty();
  }

  private static OptionalDouble end(
      @Nullable Integer year, @Nullable String text, Optional<Series> series, VariantModel model) {
    if (text != null && series.isPresent()) {
      Optional<Serial> serial = series.get().read(text);
      OptionalDouble place =
          serial.isPresent() ? inYear(series.get(), serial.get(), model) : OptionalDouble.empty();
      if (place.isPresent()) {
        return place;
      }
    }
    return year == null ? OptionalDouble.empty() : OptionalDouble.of(year);
  }

  private static OptionalDouble inYear(Series series, Serial serial, VariantModel model) {
    Integer year = model.at(series, serial).year();
    if (year == null) {
      return OptionalDouble.empty();
    }
    OrdinalSpan span = model.ordinals(series, year).orElseThrow();
    double length = Math.max(1, span.end() - span.first());
    double share = Math.min(1, Math.max(0, (serial.ordinal() - span.first()) / length));
    return OptionalDouble.of(year + share);
  }
}
