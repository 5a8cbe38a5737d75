package club.yearline.estimation;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.OrdinalSpan;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.Serial;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.Timeline;
import club.yearline.effectivity.Values;
import club.yearline.effectivity.VariantModel;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Where a change cut in in one variant, as far as the records tell: between which serials to look,
 * which values are old and which new, and how readily the part is exchanged.
 */
public final class CutInQuestion {

  /** A part for which there is a kit is exchanged at least this often. */
  private static final double RETROFITTED = 0.10;

  private final CutIn cutIn;
  private final Series series;
  private final VariantModel model;
  private final double exchange;
  private final Set<String> newValues;
  private final Set<String> oldValues = new HashSet<>();
  private final List<Retrofit> retrofits;

  private CutInQuestion(Change change, CutIn cutIn, Series series, VariantModel model) {
    Timeline timeline = model.timeline(change.feature()).orElseThrow();
    Feature feature = timeline.feature();
    this.cutIn = cutIn;
    this.series = series;
    this.model = model;
    this.exchange = feature.exchange().chance();
    this.newValues = values(change);
    timeline.changes().stream()
        .takeWhile(c -> !c.key().equals(change.key()))
        .forEach(c -> oldValues.addAll(values(c)));
    this.retrofits =
        timeline.retrofits().stream()
            .filter(r -> newValues.contains(Values.canonical(r.value())))
            .toList();
  }

  private static Set<String> values(Change change) {
    return change.offering().stream().map(Offered::canonicalValue).collect(Collectors.toSet());
  }

  /**
   * Asks where a change cut in.
   *
   * @param series one of those in which it may have cut in
   * @throws IllegalArgumentException if the change does not apply to the variant, or applies to it
   *     from the first airframe
   */
  public static CutInQuestion of(
      Catalogue catalogue, Change change, String variant, Series series) {
    CutIn cutIn =
        change
            .cutIn(variant)
            .filter(c -> !c.atStart())
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "The change " + change.key() + " did not cut in in variant " + variant));
    return new CutInQuestion(change, cutIn, series, catalogue.model(variant).orElseThrow());
  }

  /**
   * The series in which a change may have cut in: the recorded one, or else those of the variant's
   * blocks, by key.
   */
  public static List<Series> series(Catalogue catalogue, CutIn cutIn) {
    Stream<String> keys =
        cutIn.series() != null
            ? Stream.of(cutIn.series())
            : catalogue.model(cutIn.variant()).stream()
                .flatMap(m -> m.blocks().stream())
                .map(b -> b.series());
    return keys.distinct().sorted().flatMap(k -> catalogue.series(k).stream()).toList();
  }

  /** The recorded cut-in. */
  public CutIn cutIn() {
    return cutIn;
  }

  /** The series in whose order it is asked about. */
  public Series series() {
    return series;
  }

  /** The lowest serial that may be the first new one, by the records; empty without a block. */
  public OptionalLong lowest() {
    return bound(cutIn.firstSerial(), cutIn.firstYear(), OrdinalSpan::first);
  }

  /** The highest serial that may be the first new one, by the records; empty without a block. */
  public OptionalLong highest() {
    return bound(cutIn.settledSerial(), cutIn.settledYear(), OrdinalSpan::end);
  }

  private interface Otherwise {
    long in(OrdinalSpan all);
  }

  /** The recorded serial, else the first of the recorded year, else as the variant's blocks lie. */
  private OptionalLong bound(@Nullable String serial, @Nullable Integer year, Otherwise otherwise) {
    Serial recorded = serial == null ? null : series.read(serial).orElse(null);
    if (recorded != null) {
      return OptionalLong.of(recorded.ordinal());
    }
    OrdinalSpan ofYear = year == null ? null : model.ordinals(series, year).orElse(null);
    if (ofYear != null) {
      return OptionalLong.of(ofYear.first());
    }
    return model
        .ordinals(series, null)
        .map(all -> OptionalLong.of(otherwise.in(all)))
        .orElse(OptionalLong.empty());
  }

  /** What a value says about the change. */
  public Shows shows(String value) {
    String canonical = Values.canonical(value);
    boolean isNew = newValues.contains(canonical);
    boolean isOld = oldValues.contains(canonical);
    if (isNew) {
      return isOld ? Shows.BOTH : Shows.NEW;
    }
    return isOld ? Shows.OLD : Shows.NEITHER;
  }

  /**
   * The chance that the part on an airframe was exchanged; higher where a new value is recorded as
   * a retrofit for it.
   */
  public double exchange(Serial serial) {
    if (retrofits.isEmpty()) {
      return exchange;
    }
    Position position = model.at(series, serial);
    return retrofits.stream().anyMatch(r -> r.fits(position))
        ? Math.max(exchange, RETROFITTED)
        : exchange;
  }

  /**
   * Tells what counts of some observations: for each airframe the latest, if that tells anything.
   */
  public Gathered gather(List<Observed> observations) {
    Map<String, Observed> latest = new LinkedHashMap<>();
    for (Observed one : observations) {
      latest.merge(one.airframe(), one, (a, b) -> b.on().isBefore(a.on()) ? a : b);
    }
    Map<LeftOut, Integer> leftOut = new EnumMap<>(LeftOut.class);
    if (latest.size() < observations.size()) {
      leftOut.put(LeftOut.SUPERSEDED, observations.size() - latest.size());
    }
    List<Sighting> counted =
        latest.values().stream().flatMap(one -> counted(one, leftOut)).toList();
    return new Gathered(counted, leftOut);
  }

  private Stream<Sighting> counted(Observed one, Map<LeftOut, Integer> leftOut) {
    Serial serial = one.serial();
    LeftOut reason = leftOut(one);
    if (reason != null || serial == null) {
      leftOut.merge(reason == null ? LeftOut.NO_SERIAL : reason, 1, Integer::sum);
      return Stream.empty();
    }
    return Stream.of(
        new Sighting(one.airframe(), serial, one.shows() == Shows.NEW, exchange(serial)));
  }

  private @Nullable LeftOut leftOut(Observed one) {
    if (one.serial() == null || one.series() == null) {
      return LeftOut.NO_SERIAL;
    }
    if (!one.series().equals(series.key())) {
      return LeftOut.OTHER_SERIES;
    }
    return switch (one.shows()) {
      case BOTH -> LeftOut.BOTH;
      case NEITHER -> LeftOut.NEITHER;
      case OLD, NEW -> null;
    };
  }
}
