package club.yearline.browse;

import club.yearline.catalog.CitedBy;
import club.yearline.catalog.CitedBy.Mention;
import club.yearline.catalog.Links;
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
  List<SourceList> library(Links links) {
    CitedBy citedBy = CitedBy.of(links.reading().catalogue());
    Map<SourceKind, List<Source>> byKind =
        links.reading().catalogue().records().sources().stream()
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
                    sources.stream().map(s -> item(s, citedBy, links)).toList())));
    return lists;
  }

  private SourceList.Item item(Source source, CitedBy citedBy, Links links) {
    return new SourceList.Item(
        source.title(),
        links.source(source.key()),
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
  SourcePage page(Source source, Links links) {
    Map<EntryKind, List<Mention>> byKind =
        CitedBy.of(links.reading().catalogue()).source(source.key()).stream()
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
        byKind.entrySet().stream().map(e -> group(e.getKey(), e.getValue(), links)).toList());
  }

  private SourcePage.Group group(EntryKind kind, List<Mention> cited, Links links) {
    List<SourcePage.Item> items = cited.stream().limit(SHOWN).map(c -> item(c, links)).toList();
    return new SourcePage.Group(
        "records.kind." + kind.code() + ".many", items, cited.size() - items.size());
  }

  private SourcePage.Item item(Mention cited, Links links) {
    EntryNames names = new EntryNames(links.reading().catalogue(), texts);
    String only = cited.citation().variant();
    return new SourcePage.Item(
        names.name(cited.entry()),
        links.at(names.path(cited.entry())),
        cited.citation().locator(),
        cited.citation().supports(),
        only == null
            ? null
            : links.reading().catalogue().variant(only).map(Variant::designation).orElse(only),
        cited.citation().note());
  }
}
