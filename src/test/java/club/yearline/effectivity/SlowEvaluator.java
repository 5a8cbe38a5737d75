package club.yearline.effectivity;

import club.yearline.citation.Citation;
import club.yearline.citation.Grade;
import club.yearline.citation.SourceKind;
import club.yearline.citation.Stance;
import club.yearline.effectivity.SlowAnswer.SlowPossible;
import club.yearline.effectivity.SlowAnswer.SlowStretch;
import club.yearline.effectivity.SlowStanding.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A second evaluator, slow and obviously right: written from the definitions, with plain loops over
 * every serial and every year, and sharing nothing with the engine but the records.
 */
final class SlowEvaluator {

  private static final String NOTHING = "-";

  private final Records records;
  private final SlowSerials serials;
  private final SlowStanding standings;
  private final Map<String, Map<String, List<Change>>> ordered = new HashMap<>();
  private final Map<String, Grade> grades = new HashMap<>();
  private final Map<String, Change> changes = new HashMap<>();

  SlowEvaluator(Records records) {
    this.records = records;
    this.serials = new SlowSerials(records);
    this.standings = new SlowStanding(records, serials);
    records.changes().forEach(c -> changes.put(c.key(), c));
    records.sources().forEach(s -> grades.put(s.key(), gradeOf(s.source().kind())));
  }

  SlowSerials serials() {
    return serials;
  }

  TreeSet<Integer> years(String variant) {
    return standings.years(variant);
  }

  /** The features that belong to a variant. */
  TreeSet<String> featuresOf(String variant) {
    TreeSet<String> features = new TreeSet<>();
    for (Change change : records.changes()) {
      if (change.cutIn(variant).isPresent()) {
        features.add(change.feature());
      }
    }
    return features;
  }

  List<Change> inOrder(String feature, String variant) {
    return ordered
        .computeIfAbsent(variant, v -> new HashMap<>())
        .computeIfAbsent(feature, f -> standings.inOrder(f, variant));
  }

  /** With a serial, or with a year of which no serial block is known. */
  SlowAnswer along(String feature, Place place) {
    List<SlowPossible> possible = new ArrayList<>(List.of(new SlowPossible(NOTHING, false)));
    Standing standing = null;
    for (Change change : inOrder(feature, place.variant())) {
      standing = standings.of(change.cutIn(place.variant()).orElseThrow(), place, standing);
      if (standing == Standing.AFTER) {
        possible.clear();
      }
      if (standing != Standing.BEFORE) {
        possible.add(new SlowPossible(change.key(), standing == Standing.OPEN));
      }
    }
    return answer(place.variant(), stateOf(possible), possible, List.of());
  }

  /** The changes in whose window a place lies. */
  List<String> inside(String feature, Place place) {
    List<String> inside = new ArrayList<>();
    Standing standing = null;
    for (Change change : inOrder(feature, place.variant())) {
      standing = standings.of(change.cutIn(place.variant()).orElseThrow(), place, standing);
      if (standing == Standing.INSIDE) {
        inside.add(change.key());
      }
    }
    return inside;
  }

  private static State stateOf(List<SlowPossible> possible) {
    if (possible.size() == 1) {
      return possible.get(0).change().equals(NOTHING) ? State.UNRECORDED : State.SETTLED;
    }
    return possible.stream().anyMatch(SlowPossible::open) ? State.OPEN : State.TRANSITION;
  }

  /** With a year, all serials of its blocks taken together. */
  SlowAnswer inYear(String feature, String variant, int year) {
    List<SlowStretch> stretches = stretches(feature, variant, year);
    if (stretches.isEmpty()) {
      return along(feature, new Place(variant, year, null, null));
    }
    SlowAnswer first = stretches.get(0).answer();
    if (stretches.stream().allMatch(s -> s.answer().agrees(first))) {
      return first;
    }
    Set<SlowPossible> deciding = new LinkedHashSet<>();
    stretches.forEach(s -> deciding.addAll(s.answer().possible()));
    return answer(variant, State.SPLITS, List.copyOf(deciding), stretches);
  }

  /** Serial after serial of the variant's blocks of a year (of no year, for null). */
  List<SlowStretch> stretches(String feature, String variant, @Nullable Integer year) {
    List<SlowStretch> stretches = new ArrayList<>();
    TreeSet<String> keys = new TreeSet<>();
    blocksOf(variant, year).forEach(b -> keys.add(b.series()));
    for (String series : keys) {
      List<Serial> run = new ArrayList<>();
      SlowAnswer common = null;
      for (Serial serial : serialsOf(variant, year, series)) {
        SlowAnswer answer = along(feature, new Place(variant, year, series, serial));
        if (common != null && !common.agrees(answer)) {
          stretches.add(stretch(variant, year, series, run, serial, common));
          run.clear();
        }
        common = run.isEmpty() ? answer : common;
        run.add(serial);
      }
      stretches.add(stretch(variant, year, series, run, null, common));
    }
    return stretches;
  }

  private SlowStretch stretch(
      String variant,
      @Nullable Integer year,
      String series,
      List<Serial> run,
      @Nullable Serial next,
      SlowAnswer answer) {
    List<SerialBlock> blocks =
        blocksOf(variant, year).stream().filter(b -> b.series().equals(series)).toList();
    double airframes = 0;
    for (SerialBlock block : blocks) {
      for (Serial serial : serials.counted(block)) {
        airframes += run.contains(serial) ? serials.part(series, serial) : 0;
      }
    }
    return new SlowStretch(series, run.get(0), lastOf(run, next, blocks), airframes, answer);
  }

  /**
   * Where blocks end, the last serial; where they go on, the last one without letter, or before a
   * boundary that has a letter, the letter before.
   */
  private Serial lastOf(List<Serial> run, @Nullable Serial next, List<SerialBlock> blocks) {
    Serial last = run.get(run.size() - 1);
    List<SerialBlock> holding = blocks.stream().filter(b -> serials.holds(b, last)).toList();
    if (holding.stream().noneMatch(b -> serials.holds(b, last.next()))) {
      return last;
    }
    boolean boundary = next != null && next.ordinal() == last.ordinal() && next.suffix() > 'A';
    Serial before =
        boundary
            ? new Serial(next.ordinal(), (char) (next.suffix() - 1))
            : Serial.of(last.ordinal());
    boolean ours =
        SlowSerials.order(run.get(0), before) <= 0
            && holding.stream().anyMatch(b -> serials.holds(b, before));
    return ours ? before : last;
  }

  private List<SerialBlock> blocksOf(String variant, @Nullable Integer year) {
    return serials.blocksOfVariant(variant).stream()
        .filter(b -> Objects.equals(b.year(), year))
        .toList();
  }

  private List<Serial> serialsOf(String variant, @Nullable Integer year, String series) {
    List<SerialBlock> blocks =
        blocksOf(variant, year).stream().filter(b -> b.series().equals(series)).toList();
    return serials.all(series).stream()
        .filter(s -> blocks.stream().anyMatch(b -> serials.holds(b, s)))
        .toList();
  }

  /** The airframes that the variant's blocks of a year hold. */
  double airframes(String variant, @Nullable Integer year) {
    double sum = 0;
    for (SerialBlock block : blocksOf(variant, year)) {
      for (Serial serial : serials.counted(block)) {
        sum += serials.part(block.series(), serial);
      }
    }
    return sum;
  }

  private SlowAnswer answer(
      String variant, State state, List<SlowPossible> deciding, List<SlowStretch> stretches) {
    Grade grade = Grade.NONE;
    boolean disputed = false;
    for (SlowPossible possible : deciding) {
      Change change = changes.get(possible.change());
      for (Citation citation : change == null ? List.<Citation>of() : change.citations()) {
        if (citation.variant() != null && !citation.variant().equals(variant)) {
          continue;
        }
        if (citation.stance() == Stance.DISPUTES) {
          disputed = true;
        } else if (grades.get(citation.source()).ordinal() < grade.ordinal()) {
          grade = grades.get(citation.source());
        }
      }
    }
    List<SlowPossible> shown =
        state == State.SPLITS || state == State.UNRECORDED ? List.of() : deciding;
    return new SlowAnswer(state, List.copyOf(shown), stretches, grade, disputed);
  }

  private static Grade gradeOf(SourceKind kind) {
    return switch (kind) {
      case BOOK, PERIODICAL, BROCHURE, WEB_PAGE -> Grade.PUBLISHED;
      case PHOTOGRAPH, LOGBOOK, OBSERVATION -> Grade.AIRFRAME;
      case RECOLLECTION -> Grade.RECOLLECTION;
      default -> Grade.MAKER_OR_AUTHORITY;
    };
  }
}
