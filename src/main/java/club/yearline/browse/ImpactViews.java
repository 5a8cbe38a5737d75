package club.yearline.browse;

import club.yearline.browse.DifferencePage.ImpactGroup;
import club.yearline.browse.DifferencePage.ImpactLine;
import club.yearline.browse.DifferencePage.Outcome;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.ImpactRow;
import club.yearline.effectivity.Serial;
import club.yearline.effectivity.Series;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Makes what pages show of an impact: folded by variant, and of each no more than can be read.
 *
 * @param suffix what pins a link to the later state's revision
 * @param address the page itself with its question, to which a variant can be added
 */
record ImpactViews(Wording wording, RecordTexts texts, String suffix, String address) {

  /** How many rows are shown together, shared among the variants. */
  static final int SHOWN = 90;

  List<ImpactGroup> of(List<ImpactRow> rows) {
    Map<String, List<ImpactRow>> byVariant = byVariant(rows);
    int each = Math.max(SHOWN / Math.max(byVariant.size(), 1), 3);
    int left = SHOWN;
    List<ImpactGroup> groups = new ArrayList<>();
    for (Map.Entry<String, List<ImpactRow>> own : byVariant.entrySet()) {
      int shown = Math.min(Math.min(each, left), own.getValue().size());
      groups.add(group(own.getKey(), own.getValue(), own.getValue().subList(0, shown)));
      left -= shown;
    }
    return groups;
  }

  /** The group of one variant with one page of its rows. */
  ImpactGroup page(List<ImpactRow> ofVariant, int from, int to) {
    return group(ofVariant.get(0).variant().key(), ofVariant, ofVariant.subList(from, to));
  }

  static Map<String, List<ImpactRow>> byVariant(List<ImpactRow> rows) {
    return rows.stream()
        .collect(
            Collectors.groupingBy(r -> r.variant().key(), LinkedHashMap::new, Collectors.toList()));
  }

  private ImpactGroup group(String variant, List<ImpactRow> all, List<ImpactRow> shown) {
    return new ImpactGroup(
        all.get(0).variant().designation(),
        counts(all),
        shown.stream().map(this::line).toList(),
        all.size() - shown.size(),
        address + (address.indexOf('?') < 0 ? "?" : "&") + "variant=" + variant);
  }

  private String counts(List<ImpactRow> rows) {
    return Stream.of(ImpactRow.Kind.values())
        .map(
            kind -> {
              long count = rows.stream().filter(r -> r.kind() == kind).count();
              return count == 0 ? "" : texts.count("impact." + kind.code(), count);
            })
        .filter(s -> !s.isEmpty())
        .collect(Collectors.joining(", "));
  }

  private ImpactLine line(ImpactRow row) {
    boolean evidence = row.kind() == ImpactRow.Kind.EVIDENCE_ONLY;
    return new ImpactLine(
        row.kind().code(),
        row.feature().name(),
        row.after() == null ? null : "/features/" + row.feature().key() + suffix,
        place(row),
        airframes(row),
        evidence ? evidence(row.before()) : outcome(row.before()),
        evidence ? evidence(row.after()) : outcome(row.after()));
  }

  private String place(ImpactRow row) {
    String years =
        row.firstYear() == null
            ? texts.get("place.year-unknown")
            : wording.years(row.firstYear(), row.lastYear());
    String first = serial(row.series(), row.firstSerial());
    String last = serial(row.series(), row.lastSerial());
    return first.isEmpty() ? years : texts.get("place.serials", years, wording.range(first, last));
  }

  private static String serial(@Nullable Series series, @Nullable Serial serial) {
    return series == null || serial == null ? "" : series.show(serial);
  }

  private String airframes(ImpactRow row) {
    double before = row.airframesBefore();
    double after = row.airframesAfter();
    if (before == 0 || after == 0 || before == after) {
      double count = Math.max(before, after);
      return count == 0 ? "" : wording.airframes(count);
    }
    return texts.get("impact.airframes", wording.airframes(before), wording.airframes(after));
  }

  private Outcome outcome(@Nullable Answer answer) {
    return answer == null
        ? new Outcome(null, texts.get("impact.no-answer"))
        : new Outcome(answer.state().code(), wording.answer(answer));
  }

  private Outcome evidence(@Nullable Answer answer) {
    if (answer == null) {
      return outcome(null);
    }
    String grade = texts.message("mark.grade." + answer.evidence().grade().code());
    String disputed = answer.evidence().disputed() ? texts.message("mark.disputed") : "";
    int retrofits = answer.retrofits().size();
    String fitted = retrofits == 0 ? "" : texts.count("retrofits", retrofits);
    return new Outcome(
        null,
        Stream.of(grade, disputed, fitted)
            .filter(s -> !s.isEmpty())
            .collect(Collectors.joining("; ")));
  }
}
