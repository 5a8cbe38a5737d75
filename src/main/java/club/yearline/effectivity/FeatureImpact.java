package club.yearline.effectivity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The impact on one feature of one variant. */
final class FeatureImpact {

  private final @Nullable VariantModel old;
  private final @Nullable VariantModel now;
  private final Feature feature;
  private final ImpactCuts cuts;
  private final List<ImpactRow> rows = new ArrayList<>();

  /** Whether the segment just before was part of the last row, so that the next may join it. */
  private boolean adjoins;

  FeatureImpact(@Nullable VariantModel old, @Nullable VariantModel now, Feature feature) {
    this.old = old;
    this.now = now;
    this.feature = feature;
    this.cuts = new ImpactCuts(old, now, feature.key());
  }

  List<ImpactRow> rows() {
    Map<Place, Pair> pairs = new TreeMap<>(Place.IN_ORDER);
    segments(old).forEach(s -> pairs.put(Place.of(s), new Pair(s, null)));
    for (Segment segment : segments(now)) {
      pairs.merge(Place.of(segment), new Pair(null, segment), Pair::with);
    }
    pairs.forEach(this::add);
    return rows;
  }

  private List<Segment> segments(@Nullable VariantModel model) {
    return model == null ? List.of() : Segments.of(model, cuts::addTo);
  }

  private void add(Place place, Pair pair) {
    ImpactRow row = row(pair);
    if (row == null) {
      adjoins = false;
      return;
    }
    ImpactRow last = rows.isEmpty() ? null : rows.get(rows.size() - 1);
    if (adjoins && last != null && sameDifference(last, row)) {
      rows.set(rows.size() - 1, joined(last, row));
    } else {
      rows.add(row);
    }
    adjoins = true;
  }

  private @Nullable ImpactRow row(Pair pair) {
    Answer before = answer(old, pair.old);
    Answer after = answer(now, pair.now);
    ImpactRow.Kind kind = kind(pair, before, after);
    if (kind == null) {
      return null;
    }
    Segment segment = pair.any();
    Position position = segment.position();
    Serial end = segment.end();
    Serial from = position.serial();
    Serial last = null;
    if (end != null && from != null) {
      last = end.lastNamedBefore().isBelow(from) ? from : end.lastNamedBefore();
    }
    return new ImpactRow(
        kind,
        position.variant(),
        feature,
        position.year(),
        position.year(),
        position.series(),
        from,
        last,
        airframes(old, pair.old),
        airframes(now, pair.now),
        before,
        after);
  }

  private ImpactRow.@Nullable Kind kind(
      Pair pair, @Nullable Answer before, @Nullable Answer after) {
    if (before == null && after == null) {
      return null;
    }
    if (pair.old == null) {
      return ImpactRow.Kind.APPEARS;
    }
    if (pair.now == null) {
      return ImpactRow.Kind.DISAPPEARS;
    }
    if (before == null || after == null || before.differsFrom(after)) {
      return ImpactRow.Kind.CHANGED;
    }
    return before.differsInEvidenceFrom(after) ? ImpactRow.Kind.EVIDENCE_ONLY : null;
  }

  private @Nullable Answer answer(@Nullable VariantModel model, @Nullable Segment segment) {
    return model == null || segment == null
        ? null
        : model.timeline(feature.key()).map(t -> t.along(segment.position())).orElse(null);
  }

  private static double airframes(@Nullable VariantModel model, @Nullable Segment segment) {
    if (model == null || segment == null || segment.end() == null) {
      return 0;
    }
    Position at = segment.position();
    return at.series() == null || at.serial() == null
        ? 0
        : model.production().airframes(at.series(), at.serial(), segment.end(), at.year());
  }

  private static boolean sameDifference(ImpactRow one, ImpactRow other) {
    return one.kind() == other.kind()
        && sameSeries(one.series(), other.series())
        && same(one.before(), other.before())
        && same(one.after(), other.after());
  }

  private static boolean sameSeries(@Nullable Series one, @Nullable Series other) {
    return one == null || other == null ? one == other : one.key().equals(other.key());
  }

  private static boolean same(@Nullable Answer one, @Nullable Answer other) {
    return one == null || other == null
        ? one == other
        : one.agreesWith(other) && !one.differsInEvidenceFrom(other);
  }

  private static ImpactRow joined(ImpactRow first, ImpactRow second) {
    return new ImpactRow(
        first.kind(),
        first.variant(),
        first.feature(),
        earlier(first.firstYear(), second.firstYear()),
        later(first.lastYear(), second.lastYear()),
        first.series(),
        first.firstSerial(),
        second.lastSerial(),
        first.airframesBefore() + second.airframesBefore(),
        first.airframesAfter() + second.airframesAfter(),
        first.before(),
        first.after());
  }

  private static @Nullable Integer earlier(@Nullable Integer one, @Nullable Integer other) {
    if (one == null) {
      return other;
    }
    return other == null ? one : Integer.valueOf(Math.min(one, other));
  }

  private static @Nullable Integer later(@Nullable Integer one, @Nullable Integer other) {
    if (one == null) {
      return other;
    }
    return other == null ? one : Integer.valueOf(Math.max(one, other));
  }

  /** Where a segment lies, for pairing those of two states. */
  private record Place(String series, @Nullable Serial serial, @Nullable Integer year) {

    static final Comparator<Place> IN_ORDER =
        Comparator.comparing(Place::series)
            .thenComparing(Place::serial, Comparator.nullsFirst(Comparator.naturalOrder()))
            .thenComparing(Place::year, Comparator.nullsLast(Comparator.naturalOrder()));

    static Place of(Segment segment) {
      Position at = segment.position();
      Series series = at.series();
      return new Place(series == null ? "" : series.key(), at.serial(), at.year());
    }
  }

  /** A segment of the earlier state and its twin of the later one; one may be missing. */
  private record Pair(@Nullable Segment old, @Nullable Segment now) {

    Pair with(Pair other) {
      return new Pair(old, other.now == null ? now : other.now);
    }

    Segment any() {
      return Objects.requireNonNull(now == null ? old : now);
    }
  }
}
