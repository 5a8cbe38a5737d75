package club.yearline.compare;

import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Position;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Lays variant-years side by side. */
final class Comparisons {

  private final Links links;
  private final Phrases phrases;
  private final Words words;
  private final Told told;
  private final Origins origins;
  private final List<Column> columns;
  private final Amount reserve;

  Comparisons(
      Links links,
      Wording wording,
      Phrases phrases,
      Told told,
      List<Column> columns,
      Amount reserve) {
    this.links = links;
    this.phrases = phrases;
    this.words = new Words(links.reading().catalogue(), phrases);
    this.told = told;
    this.origins = new Origins(links, wording, phrases, words);
    this.columns = columns;
    this.reserve = reserve;
  }

  Comparison of(Address address) {
    List<Comparison.Head> heads = new ArrayList<>();
    for (Column column : columns) {
      Position position = column.position();
      Chosen chosen = new Chosen(position.variant().key(), "" + position.year());
      heads.add(
          new Comparison.Head(
              letter(heads.size()),
              words.name(position),
              links.expected(position),
              address.without(chosen).link(links)));
    }
    return new Comparison(
        heads,
        Figure.ALL.stream().map(this::row).toList(),
        Derived.ALL.stream().map(this::row).toList());
  }

  /** By which a drawing names the variant-year at a place. */
  static String letter(int index) {
    return String.valueOf((char) ('A' + index));
  }

  private Comparison.FigureRow row(Figure figure) {
    Optional<Amount> first = one(columns.get(0).range(figure));
    List<Comparison.FigureCell> cells =
        columns.stream()
            .map(
                c ->
                    cell(
                        c,
                        b -> recorded(b.recorded(figure)),
                        () -> whole(c, figure),
                        c.range(figure).isEmpty(),
                        c == columns.get(0)
                            ? null
                            : beside(first, one(c.range(figure)), a -> a.in(told.scale(figure)))))
            .toList();
    return row(words.heading(figure), cells, origins.of(figure, columns).orElse(null));
  }

  private Comparison.FigureRow row(Derived derived) {
    Optional<Amount> first = one(columns.get(0).range(derived, reserve));
    List<Comparison.FigureCell> cells =
        columns.stream()
            .map(
                c ->
                    cell(
                        c,
                        b -> worked(new Arithmetic(b, reserve).of(derived)),
                        () ->
                            c.range(derived, reserve)
                                .map(told::text)
                                .orElseGet(() -> phrases.of("compare.missing.partly")),
                        c.range(derived, reserve).isEmpty(),
                        c == columns.get(0)
                            ? null
                            : beside(
                                first,
                                one(c.range(derived, reserve)),
                                a -> a.in(told.scale(derived.scale())))))
            .toList();
    return row(words.heading(derived), cells, null);
  }

  private interface Whole {
    String text();
  }

  private Comparison.FigureCell cell(
      Column column,
      Function<Build, String> each,
      Whole whole,
      boolean missing,
      @Nullable String beside) {
    List<String> texts = column.builds().stream().map(each).toList();
    String head = words.name(column.position());
    if (texts.stream().distinct().count() == 1) {
      return new Comparison.FigureCell(head, texts.get(0), missing, beside, List.of());
    }
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      Build.Serials serials = column.builds().get(i).serials();
      if (serials != null) {
        parts.add(phrases.of("compare.part", words.serials(serials), texts.get(i)));
      }
    }
    return new Comparison.FigureCell(head, whole.text(), missing, beside, parts);
  }

  private Comparison.FigureRow row(
      String name, List<Comparison.FigureCell> cells, Comparison.@Nullable Origin origin) {
    long different =
        cells.stream().map(c -> c.missing() ? "" : c.text() + c.parts()).distinct().count();
    boolean nothing = cells.stream().allMatch(Comparison.FigureCell::missing);
    String word =
        nothing || cells.size() < 2
            ? ""
            : phrases.of(different > 1 ? "compare.differs" : "compare.same");
    return new Comparison.FigureRow(name, different > 1, word, origin, cells);
  }

  private String recorded(Recorded recorded) {
    Missing missing = recorded.missing();
    if (missing == Missing.PARTLY || missing == Missing.NOT_POSITIVE) {
      return phrases.of("compare.partly." + missing.code(), told.recorded(recorded));
    }
    return missing == null ? told.recorded(recorded) : words.missing(missing);
  }

  private String whole(Column column, Figure figure) {
    return column.builds().stream()
        .flatMap(b -> b.recorded(figure).range().stream())
        .reduce(Interval::around)
        .map(r -> told.text(figure, r))
        .orElseGet(() -> words.missing(Missing.UNRECORDED));
  }

  private String worked(Worked worked) {
    return worked.found().map(told::text).orElseGet(() -> words.without(worked.missing()));
  }

  private static Optional<Amount> one(Optional<Interval> range) {
    return range.filter(Interval::isOne).map(Interval::low);
  }

  /** By how much it is more or less than the first; null where that is nothing or not known. */
  private static @Nullable String beside(
      Optional<Amount> first, Optional<Amount> one, Function<Amount, Amount> shown) {
    if (first.isEmpty() || one.isEmpty() || first.get().compare(one.get()) == 0) {
      return null;
    }
    Amount difference = shown.apply(one.get()).rounded().minus(shown.apply(first.get()).rounded());
    return difference.value().signum() == 0 || difference.isLost()
        ? null
        : (difference.value().signum() > 0 ? "+" : "") + difference.number();
  }
}
