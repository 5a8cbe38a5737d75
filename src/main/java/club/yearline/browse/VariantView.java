package club.yearline.browse;

import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.SoldName;
import club.yearline.effectivity.State;
import club.yearline.effectivity.Timeline;
import club.yearline.effectivity.Variant;
import club.yearline.effectivity.VariantModel;
import club.yearline.effectivity.YearSpan;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What the head of a variant's page shows, in words and with addresses. */
final class VariantView {

  private final VariantModel model;
  private final Catalogue catalogue;
  private final Links links;
  private final Words words;
  private final Wording wording;

  VariantView(VariantModel model, Catalogue catalogue, Links links, Words words, Wording wording) {
    this.model = model;
    this.catalogue = catalogue;
    this.links = links;
    this.words = words;
    this.wording = wording;
  }

  /** A name it was sold under, and when. */
  record Name(String name, String years) {}

  /** A produced year and its expected configuration. */
  record Year(int year, String href) {}

  /** A figure: what it was last, and what it was before. */
  record Figure(String name, String href, String latest, String since, List<String> earlier) {}

  public @Nullable SideView getPicture() {
    return SideView.of(variant(), catalogue, links, words).orElse(null);
  }

  public String getFamilyHref() {
    return links.family(model.family().key());
  }

  /** What its years are, as a heading. */
  public String getYearWord() {
    return words.say("year-word." + model.family().yearMeans().code());
  }

  public String getProduced() {
    return Production.of(variant()).years(wording);
  }

  public String getBuilt() {
    var built = Production.of(variant()).built();
    return built.isPresent() ? "" + built.getAsInt() : "";
  }

  /** The serials of its blocks, from the lowest to the highest of each series. */
  public List<String> getSerials() {
    Map<String, List<SerialBlock>> bySeries =
        model.blocks().stream()
            .collect(Collectors.groupingBy(SerialBlock::series, TreeMap::new, Collectors.toList()));
    return bySeries.entrySet().stream()
        .map(
            e ->
                SerialRange.around(
                    catalogue.series(e.getKey()).orElseThrow(), e.getValue(), words, wording))
        .toList();
  }

  public List<Name> getNames() {
    return variant().names().stream()
        .sorted(
            Comparator.comparing(
                    SoldName::firstYear, Comparator.nullsFirst(Comparator.naturalOrder()))
                .thenComparing(SoldName::name))
        .map(n -> new Name(n.name(), years(n)))
        .toList();
  }

  private String years(SoldName name) {
    if (name.firstYear() == null) {
      return name.lastYear() == null ? "" : words.say("until", name.lastYear());
    }
    return wording.years(name.firstYear(), name.lastYear());
  }

  /** Its produced years, each leading to the expected configuration. */
  public List<Year> getYears() {
    return Arrays.stream(model.years())
        .mapToObj(y -> new Year(y, links.expected(variant().key(), y, null)))
        .toList();
  }

  /** The comparison of its figures, begun with its last year; null where it has no year. */
  public @Nullable String getCompareHref() {
    int[] years = model.years();
    return years.length == 0
        ? null
        : links.compare(List.of(Position.of(variant(), years[years.length - 1])));
  }

  /** Its figures: the number features with a settled answer. */
  public List<Figure> getFigures() {
    return model.timelines().stream()
        .filter(t -> t.feature().isNumber())
        .flatMap(t -> figure(t).stream())
        .toList();
  }

  private List<Figure> figure(Timeline timeline) {
    List<YearSpan> settled =
        timeline.spans().stream().filter(s -> s.answer().state() == State.SETTLED).toList();
    if (settled.isEmpty()) {
      return List.of();
    }
    int last = settled.size() - 1;
    return List.of(
        new Figure(
            timeline.feature().name(),
            links.feature(timeline.feature().key()),
            wording.answer(settled.get(last).answer()),
            settled.size() > 1 ? span(settled.get(last)) : "",
            settled.subList(0, last).stream()
                .filter(s -> s.answer().differsFrom(settled.get(last).answer()))
                .map(s -> words.say("figure.earlier", wording.answer(s.answer()), span(s)))
                .toList()));
  }

  private String span(YearSpan span) {
    return wording.range("" + span.firstYear(), "" + span.lastYear());
  }

  private Variant variant() {
    return model.variant();
  }
}
