package club.yearline.browse;

import club.yearline.browse.HistoryPage.HistoryItem;
import club.yearline.catalog.Contributors;
import club.yearline.catalog.EntryRef;
import club.yearline.catalog.History;
import club.yearline.catalog.Reading;
import club.yearline.catalog.Revision;
import club.yearline.catalog.Snapshots;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.web.Pages;
import club.yearline.web.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** Makes what the page of an entry's history shows. */
@Component
class HistoryViews {

  private static final int ON_A_PAGE = 30;

  private final History history;
  private final Snapshots snapshots;
  private final Contributors contributors;
  private final Wording wording;
  private final RecordTexts texts;

  HistoryViews(
      History history,
      Snapshots snapshots,
      Contributors contributors,
      Wording wording,
      RecordTexts texts) {
    this.history = history;
    this.snapshots = snapshots;
    this.contributors = contributors;
    this.wording = wording;
    this.texts = texts;
  }

  /**
   * The history of an entry up to the revision read.
   *
   * @param page the page of it, counted from 1
   */
  HistoryPage page(EntryRef ref, int page, Reading reading) {
    List<HistoryStep> steps = HistoryStep.of(history.of(ref.kind(), ref.key()), reading.revision());
    String kind = "records.kind." + ref.kind().code();
    if (steps.isEmpty()) {
      throw Refusal.notFound("no-history", texts.message(kind), ref.key(), reading.revision());
    }
    HistoryStep last = steps.get(0);
    EntryNames names = new EntryNames(reading.catalogue(), texts);
    boolean withdrawn = last.after() == null;
    String path = names.path(last.entry());
    String address = reading.link("/history/" + ref.kind().code() + "/" + ref.key());
    Pages pages = pages(address, page, steps.size());
    return new HistoryPage(
        kind,
        names.name(last.entry()),
        withdrawn ? path + "?rev=" + last.readAt() : reading.link(path),
        withdrawn,
        items(shown(steps, pages), names, reading.catalogue()),
        pages);
  }

  private static Pages pages(String address, int page, int steps) {
    int count = (steps + ON_A_PAGE - 1) / ON_A_PAGE;
    return new Pages(address, Math.min(Math.max(page, 1), count), count);
  }

  private static List<HistoryStep> shown(List<HistoryStep> steps, Pages pages) {
    int from = (pages.current() - 1) * ON_A_PAGE;
    return steps.subList(from, Math.min(from + ON_A_PAGE, steps.size()));
  }

  private List<HistoryItem> items(List<HistoryStep> steps, EntryNames names, Catalogue catalogue) {
    Map<Integer, Revision> revisions =
        snapshots.revisions(steps.stream().map(HistoryStep::revision).toList()).stream()
            .collect(Collectors.toMap(Revision::number, Function.identity()));
    EntryFields fields = new EntryFields(new PartWords(catalogue, wording, texts));
    List<HistoryItem> items = new ArrayList<>();
    for (HistoryStep step : steps) {
      Revision revision = Objects.requireNonNull(revisions.get(step.revision()));
      items.add(item(step, revision, names, fields));
    }
    return items;
  }

  private HistoryItem item(
      HistoryStep step, Revision revision, EntryNames names, EntryFields fields) {
    return new HistoryItem(
        RevisionPage.of(revision, contributors),
        step.what(),
        step.after() == null ? List.of() : fields.differences(step.before(), step.after()),
        names.path(step.entry()) + "?rev=" + step.readAt(),
        revision.proposedBy().person() == null
            ? null
            : "/corrections/of-revision/" + revision.number());
  }
}
