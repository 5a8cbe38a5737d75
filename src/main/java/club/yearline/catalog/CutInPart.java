package club.yearline.catalog;

import static club.yearline.effectivity.EntryKind.SERIES;
import static club.yearline.effectivity.EntryKind.VARIANT;

import club.yearline.effectivity.CutIn;
import jakarta.persistence.Embeddable;
import org.jspecify.annotations.Nullable;

/** A cut-in within a version of its change. */
@Embeddable
record CutInPart(
    long variantId,
    boolean atStart,
    @Nullable Integer firstYear,
    @Nullable Integer settledYear,
    @Nullable Long seriesId,
    @Nullable String firstSerial,
    @Nullable String settledSerial) {

  static CutInPart of(CutIn cutIn, EntryIds ids) {
    return new CutInPart(
        ids.id(VARIANT, cutIn.variant()),
        cutIn.atStart(),
        cutIn.firstYear(),
        cutIn.settledYear(),
        ids.idOrNull(SERIES, cutIn.series()),
        cutIn.firstSerial(),
        cutIn.settledSerial());
  }

  CutIn toCutIn(Sweep sweep) {
    return new CutIn(
        sweep.key(variantId),
        atStart,
        firstYear,
        settledYear,
        sweep.keyOrNull(seriesId),
        firstSerial,
        settledSerial);
  }
}
