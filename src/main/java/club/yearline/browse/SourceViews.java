package club.yearline.browse;

import club.yearline.catalog.CitedBy;
import club.yearline.catalog.CitedBy.Mention;
import club.yearline.catalog.Reading;
import club.yearline.citation.Source;
import club.yearline.citation.SourceKind;
import club.yearline.effectivity.EntryKind;
import club.yearline.effectivity.SourceEntry;
import club.yearline.effectivity.Variant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Makes what the pages about sources show. */
@Component
class SourceViews {

  /** How many citations of one kind of record a source's page lists. */
  private static final int SHOWN = 150;

  private final RecordTexts texts;

  SourceViews(RecordTexts texts) {
    this.texts = texts;
  }

  /** The library, by kind, best evidence first. */
  List<SourceList> library(Reading reading) {
    CitedBy citedBy = CitedBy.of(reading.catalogue());
    Map<SourceKind, List<Source>> byKind =
        reading.catalogue().records().sources().stream()
            .map(SourceEntry::source)
            .sorted(Comparator.comparing(Source::title).thenComparing(Source::key))
            .collect(Collectors.groupingBy(Source::kind, TreeMap::new, Collectors.toList()));
    List<SourceList> lists = new ArrayList<>();
    byKind.forEach(
        (kind, sources) ->
            lists.add(
                new SourceList(
                    "records.source-kind." + kind.code(),
                    kind.grade().code(),
                    sources.stream().map(s -> item(s, citedBy, reading)).toList())));
    return lists;
  }

  private SourceList.Item item(Source source, CitedBy citedBy, Reading reading) {
    return new SourceList.Item(
        source.title(),
        reading.link("/sources/" + source.key()),
        source.identifier(),
        source.author(),
        date(source.issued()),
        citedBy.supports(source.key()),
        citedBy.disputes(source.key()));
  }

  private @Nullable String date(@Nullable String issued) {
    return issued == null ? null : new DateWords(texts).say(issued);
  }

  /** One source. */
  SourcePage page(Source source, Reading reading) {
    Map<EntryKind, List<Mention>> byKind =
        CitedBy.of(reading.catalogue()).source(source.key()).stream()
            .collect(
                Collectors.groupingBy(c -> c.entry().kind(), TreeMap::new, Collectors.toList()));
    return new SourcePage(
        source.title(),
        "records.source-kind." + source.kind().code(),
        source.kind().grade().code(),
        source.author(),
        source.publisher(),
        source.identifier(),
        date(source.issued()),
        source.url(),
        source.accessed() == null ? null : source.accessed().toString(),
        source.note(),
        byKind.entrySet().stream().map(e -> group(e.getKey(), e.getValue(), reading)).toList());
  }

  private SourcePage.Group group(EntryKind kind, List<Mention> cited, Reading reading) {
    List<SourcePage.Item> items = cited.stream().limit(SHOWN).map(c -> item(c, reading)).toList();
    return new SourcePage.Group(
        "records.kind." + kind.code() + ".many", items, cited.size() - items.size());
  }

  private SourcePage.Item item(Mention cited, Reading reading) {
    EntryNames names = new EntryNames(reading.catalogue(), texts);
    String only = cited.citation().variant();
    return new SourcePage.Item(
        names.name(cited.entry()),
        reading.link(names.path(cited.entry())),
        cited.citation().locator(),
        cited.citation().supports(),
        only == null
            ? null
            : reading.catalogue().variant(only).map(Variant::designation).orElse(only),
        cited.citation().note());
  }
}
