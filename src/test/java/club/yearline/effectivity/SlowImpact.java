package club.yearline.effectivity;

import club.yearline.effectivity.SlowStanding.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** The impact on one feature of one variant, position after position (section 7). */
final class SlowImpact {

  private static final Comparator<Place> IN_ORDER =
      Comparator.comparing((Place p) -> p.series() == null ? "" : p.series())
          .thenComparing(Place::serial, Comparator.nullsFirst(SlowSerials::order))
          .thenComparing(Place::year, Comparator.nullsLast(Comparator.naturalOrder()));

  private final State before;
  private final State after;
  private final String variant;
  private final String feature;

  SlowImpact(State before, State after, String variant, String feature) {
    this.before = before;
    this.after = after;
    this.variant = variant;
    this.feature = feature;
  }

  /** One state of a catalogue. */
  record State(Records records, SlowEvaluator slow) {

    State(Records records) {
      this(records, new SlowEvaluator(records));
    }
  }

  /** Adjacent places with one difference. */
  record Row(
      ImpactRow.Kind kind,
      List<Place> places,
      double airframesBefore,
      double airframesAfter,
      @Nullable SlowAnswer before,
      @Nullable SlowAnswer after) {}

  /** Whether some serial lies in blocks of the variant of several years: then rows interleave. */
  boolean interleaves() {
    List<Place> places = List.copyOf(places());
    for (int i = 1; i < places.size(); i++) {
      Place one = places.get(i - 1);
      Place other = places.get(i);
      if (one.serial() != null
          && one.serial().equals(other.serial())
          && one.series().equals(other.series())) {
        return true;
      }
    }
    return false;
  }

  List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    boolean adjoins = false;
    for (Place place : places()) {
      Row row = row(place);
      if (row == null) {
        adjoins = false;
        continue;
      }
      Row last = adjoins ? rows.get(rows.size() - 1) : null;
      if (last != null && joins(last, row)) {
        rows.set(rows.size() - 1, joined(last, row));
      } else {
        rows.add(row);
      }
      adjoins = true;
    }
    return rows;
  }

  private TreeSet<Place> places() {
    TreeSet<Place> places = new TreeSet<>(IN_ORDER);
    for (State state : List.of(before, after)) {
      if (state.records.variants().stream().anyMatch(v -> v.key().equals(variant))) {
        for (int year : state.slow.years(variant)) {
          places.add(new Place(variant, year, null, null));
        }
        for (SerialBlock block : state.slow.serials().blocksOfVariant(variant)) {
          for (Serial serial : named(state, block.series())) {
            places.add(new Place(variant, block.year(), block.series(), serial));
          }
        }
      }
    }
    places.removeIf(p -> !exists(before, p) && !exists(after, p));
    return places;
  }

  /** All plain serials, and those with a letter that a block or the feature's cut-ins name. */
  private List<Serial> named(State state, String series) {
    List<Change> ofFeature =
        state.records.changes().stream()
            .filter(c -> c.feature().equals(feature) && c.cutIn(variant).isPresent())
            .map(c -> only(c))
            .toList();
    Records bare =
        new Records(
            state.records.families(),
            state.records.variants(),
            state.records.series(),
            state.records.blocks(),
            state.records.features(),
            ofFeature,
            List.of(),
            state.records.sources(),
            List.of());
    List<Serial> lettered = new SlowSerials(bare).all(series);
    return state.slow.serials().all(series).stream()
        .filter(s -> s.suffix() == Serial.NO_SUFFIX || lettered.contains(s))
        .toList();
  }

  private Change only(Change c) {
    return new Change(
        c.key(),
        c.feature(),
        c.title(),
        c.detail(),
        c.offering(),
        List.of(c.cutIn(variant).orElseThrow()),
        c.citations());
  }

  /** A year without blocks, or a serial of a block. */
  private boolean exists(State state, Place place) {
    if (state.records.variants().stream().noneMatch(v -> v.key().equals(variant))) {
      return false;
    }
    List<SerialBlock> ofYear =
        state.slow.serials().blocksOfVariant(variant).stream()
            .filter(b -> Objects.equals(b.year(), place.year()))
            .toList();
    return place.serial() == null
        ? ofYear.isEmpty() && state.slow.years(variant).contains(place.year())
        : ofYear.stream().anyMatch(b -> holds(state, b, place));
  }

  private static boolean holds(State state, SerialBlock block, Place place) {
    SlowSerials serials = state.slow.serials();
    List<Serial> all = serials.all(block.series());
    boolean enumerated =
        block.lastSerial() != null || place.serial().ordinal() <= all.get(all.size() - 1).ordinal();
    return block.series().equals(place.series())
        && serials.holds(block, place.serial())
        && enumerated;
  }

  private @Nullable Row row(Place place) {
    SlowAnswer old = answer(before, place);
    SlowAnswer now = answer(after, place);
    ImpactRow.Kind kind = null;
    if (old == null && now == null) {
      return null;
    } else if (!exists(before, place)) {
      kind = ImpactRow.Kind.APPEARS;
    } else if (!exists(after, place)) {
      kind = ImpactRow.Kind.DISAPPEARS;
    } else if (old == null || now == null || !outcome(before, old).equals(outcome(after, now))) {
      kind = ImpactRow.Kind.CHANGED;
    } else if (old.grade() != now.grade()
        || old.disputed() != now.disputed()
        || !retrofits(before).equals(retrofits(after))) {
      kind = ImpactRow.Kind.EVIDENCE_ONLY;
    }
    return kind == null
        ? null
        : new Row(
            kind, List.of(place), airframes(before, place), airframes(after, place), old, now);
  }

  private @Nullable SlowAnswer answer(State state, Place place) {
    boolean belongs =
        state.records.changes().stream()
            .anyMatch(c -> c.feature().equals(feature) && c.cutIn(variant).isPresent());
    return belongs && exists(state, place) ? state.slow.along(feature, place) : null;
  }

  /** State and offerings. */
  private static List<Object> outcome(State state, SlowAnswer answer) {
    List<Object> outcome = new ArrayList<>(List.of(answer.state()));
    for (String key : answer.changes()) {
      TreeSet<String> offering = new TreeSet<>();
      for (Change change : state.records.changes()) {
        if (change.key().equals(key)) {
          change.offering().forEach(o -> offering.add(Values.canonical(o.value()) + o.fit()));
        }
      }
      outcome.add(offering);
    }
    return outcome;
  }

  private TreeSet<String> retrofits(State state) {
    TreeSet<String> retrofits = new TreeSet<>();
    for (Retrofit retrofit : state.records.retrofits()) {
      if (retrofit.variant().equals(variant) && retrofit.feature().equals(feature)) {
        retrofits.add(retrofit.toString());
      }
    }
    return retrofits;
  }

  private double airframes(State state, Place place) {
    double sum = 0;
    for (SerialBlock block : state.slow.serials().blocksOfVariant(variant)) {
      boolean ours =
          block.series().equals(place.series()) && Objects.equals(block.year(), place.year());
      if (ours && state.slow.serials().counted(block).contains(place.serial())) {
        sum += state.slow.serials().part(place.series(), place.serial());
      }
    }
    return sum;
  }

  private static boolean joins(Row last, Row row) {
    Place one = last.places.get(last.places.size() - 1);
    return last.kind == row.kind
        && Objects.equals(one.series(), row.places.get(0).series())
        && same(last.before, row.before)
        && same(last.after, row.after);
  }

  private static boolean same(@Nullable SlowAnswer one, @Nullable SlowAnswer other) {
    return one == null || other == null
        ? one == other
        : one.agrees(other) && one.grade() == other.grade() && one.disputed() == other.disputed();
  }

  private static Row joined(Row first, Row second) {
    List<Place> places = new ArrayList<>(first.places);
    places.addAll(second.places);
    return new Row(
        first.kind,
        places,
        first.airframesBefore + second.airframesBefore,
        first.airframesAfter + second.airframesAfter,
        first.before,
        first.after);
  }
}
