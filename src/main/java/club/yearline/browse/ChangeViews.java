package club.yearline.browse;

import club.yearline.browse.ChangePage.CutInRow;
import club.yearline.browse.ChangePage.OfferedRow;
import club.yearline.browse.ChangePage.PageLink;
import club.yearline.browse.ChangePage.VersionItem;
import club.yearline.catalog.FindingsOf;
import club.yearline.catalog.History;
import club.yearline.catalog.Links;
import club.yearline.catalog.VersionSpan;
import club.yearline.catalog.Wording;
import club.yearline.citation.Citation;
import club.yearline.citation.Grade;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.EntryKind;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Timeline;
import club.yearline.effectivity.Variant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Makes what a change's page shows. */
@Component
class ChangeViews {

  private final Wording wording;
  private final RecordTexts texts;
  private final FindingsOf findings;
  private final History history;

  ChangeViews(Wording wording, RecordTexts texts, FindingsOf findings, History history) {
    this.wording = wording;
    this.texts = texts;
    this.findings = findings;
    this.history = history;
  }

  ChangePage page(Change change, Links links) {
    Catalogue catalogue = links.reading().catalogue();
    Feature feature = catalogue.feature(change.feature()).orElseThrow();
    return new ChangePage(
        change.title(),
        change.detail(),
        new PageLink(feature.name(), links.feature(feature.key())),
        change.offering().stream()
            .map(o -> new OfferedRow(wording.offered(feature, o), o.fit().code()))
            .toList(),
        change.cutIns().stream().map(c -> row(change, c, links)).toList(),
        CitationLine.of(change.citations(), links),
        grade(change, catalogue).code(),
        change.citations().stream().anyMatch(c -> !c.supports()),
        findings.change(links.reading().catalogue(), change.key()).stream()
            .map(f -> FindingLine.of(f, texts))
            .toList(),
        versions(change.key(), links),
        change.cutIns().stream().allMatch(CutIn::atStart) ? null : links.observed(change.key()));
  }

  private CutInRow row(Change change, CutIn cutIn, Links links) {
    Variant variant = links.reading().catalogue().variant(cutIn.variant()).orElseThrow();
    List<Change> order =
        links
            .reading()
            .catalogue()
            .model(variant.key())
            .flatMap(m -> m.timeline(change.feature()))
            .map(Timeline::changes)
            .orElse(List.of());
    int place = order.indexOf(change);
    return new CutInRow(
        new PageLink(variant.designation(), links.variant(variant.key())),
        wording.cutIn(cutIn),
        window(text(cutIn.firstYear()), text(cutIn.settledYear())),
        window(cutIn.firstSerial(), cutIn.settledSerial()),
        link(order, place - 1, links),
        link(order, place + 1, links));
  }

  /** A window as recorded, a missing end shown as such. */
  private String window(@Nullable String first, @Nullable String settled) {
    String unknown = texts.get("window.unknown");
    return first == null && settled == null
        ? ""
        : texts.get("window", first == null ? unknown : first, settled == null ? unknown : settled);
  }

  private static @Nullable String text(@Nullable Integer year) {
    return year == null ? null : year.toString();
  }

  private static @Nullable PageLink link(List<Change> order, int place, Links links) {
    return place < 0 || place >= order.size()
        ? null
        : new PageLink(order.get(place).title(), links.change(order.get(place).key()));
  }

  private static Grade grade(Change change, Catalogue catalogue) {
    return change.citations().stream()
        .filter(Citation::supports)
        .flatMap(c -> catalogue.source(c.source()).stream())
        .map(s -> s.source().kind().grade())
        .reduce(Grade.NONE, Grade::orBetter);
  }

  /** Versions up to the revision read, newest first. */
  private List<VersionItem> versions(String key, Links links) {
    EntryFields fields =
        new EntryFields(new PartWords(links.reading().catalogue(), wording, texts));
    List<VersionItem> items = new ArrayList<>();
    VersionSpan previous = null;
    for (VersionSpan span : history.of(EntryKind.CHANGE, key)) {
      if (span.since() > links.reading().revision()) {
        break;
      }
      items.add(item(previous, span, fields, links));
      previous = span;
    }
    Collections.reverse(items);
    return items;
  }

  private VersionItem item(
      @Nullable VersionSpan previous, VersionSpan span, EntryFields fields, Links links) {
    boolean ended = !span.isOpen() && span.until() <= links.reading().revision();
    return new VersionItem(
        revision(span.since(), links),
        ended ? revision(span.until(), links) : null,
        previous == null ? List.of() : fields.differences(previous.entry(), span.entry()),
        previous == null);
  }

  private PageLink revision(int number, Links links) {
    return new PageLink(texts.get("revision.number", number), links.at("/revisions/" + number));
  }
}
