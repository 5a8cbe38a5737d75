package club.yearline.testing;

import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Descent;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.EntryKind;
import club.yearline.effectivity.Records;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.Variant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Makes a failing catalogue or list small: leaves out halves of it, then quarters, then eighths.
 */
final class Shrinking {

  private Shrinking() {}

  /** The smallest catalogue found that still fails. */
  static Records of(Records failing, Predicate<Records> fails) {
    List<Entry> small =
        smaller(
            failing.entries(),
            Shrinking::withoutDangling,
            part -> fails.test(Records.of(part, failing.pictures())));
    return Records.of(small, failing.pictures());
  }

  /** The smallest list found that still fails. */
  static <T> List<T> list(List<T> failing, Predicate<List<T>> fails) {
    return smaller(failing, part -> part, fails);
  }

  private static <T> List<T> smaller(
      List<T> failing, UnaryOperator<List<T>> whole, Predicate<List<T>> fails) {
    List<T> kept = failing;
    int chunk = Math.max(1, kept.size() / 2);
    while (true) {
      List<T> smaller = withoutOneChunk(kept, chunk, whole, fails);
      if (smaller.size() < kept.size()) {
        kept = smaller;
      } else if (chunk == 1) {
        return kept;
      } else {
        chunk = chunk / 2;
      }
    }
  }

  private static <T> List<T> withoutOneChunk(
      List<T> kept, int chunk, UnaryOperator<List<T>> whole, Predicate<List<T>> fails) {
    for (int from = 0; from < kept.size(); from += chunk) {
      List<T> rest = new ArrayList<>(kept);
      rest.subList(from, Math.min(kept.size(), from + chunk)).clear();
      List<T> part = whole.apply(rest);
      if (fails.test(part)) {
        return part;
      }
    }
    return kept;
  }

  /** Leaves out what refers to entries that are no longer there, until nothing does. */
  private static List<Entry> withoutDangling(List<Entry> entries) {
    Set<String> known =
        entries.stream().map(e -> reference(e.kind(), e.key())).collect(Collectors.toSet());
    List<Entry> whole =
        entries.stream().filter(e -> references(e).allMatch(known::contains)).toList();
    return whole.size() == entries.size() ? whole : withoutDangling(whole);
  }

  private static Stream<String> references(Entry entry) {
    return Stream.concat(
        entry.citations().stream().map(c -> reference(EntryKind.SOURCE, c.source())),
        own(entry).filter(r -> !r.endsWith("/null")));
  }

  private static Stream<String> own(Entry entry) {
    if (entry instanceof Variant v) {
      return Stream.concat(
          Stream.of(reference(EntryKind.FAMILY, v.family())),
          v.descent().stream().map(Descent::from).map(p -> reference(EntryKind.VARIANT, p)));
    }
    if (entry instanceof Series s) {
      return Stream.of(reference(EntryKind.FAMILY, s.family()));
    }
    if (entry instanceof SerialBlock b) {
      return Stream.of(
          reference(EntryKind.SERIES, b.series()), reference(EntryKind.VARIANT, b.variant()));
    }
    if (entry instanceof Retrofit r) {
      return Stream.of(
          reference(EntryKind.FEATURE, r.feature()),
          reference(EntryKind.VARIANT, r.variant()),
          reference(EntryKind.SERIES, r.series()));
    }
    return entry instanceof Change c ? own(c) : Stream.of();
  }

  private static Stream<String> own(Change change) {
    return Stream.concat(
        Stream.of(reference(EntryKind.FEATURE, change.feature())),
        change.cutIns().stream().flatMap(Shrinking::own));
  }

  private static Stream<String> own(CutIn cutIn) {
    return Stream.of(
        reference(EntryKind.VARIANT, cutIn.variant()), reference(EntryKind.SERIES, cutIn.series()));
  }

  private static String reference(EntryKind kind, String key) {
    return kind + "/" + key;
  }
}
