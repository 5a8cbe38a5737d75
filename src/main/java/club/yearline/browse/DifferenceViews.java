package club.yearline.browse;

import club.yearline.browse.Between.Comparison;
import club.yearline.browse.DifferencePage.ImpactGroup;
import club.yearline.catalog.EntryEdit;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.ImpactRow;
import club.yearline.web.Pages;
import club.yearline.web.Refusal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Makes what pages show of a comparison of two revisions. */
@Component
class DifferenceViews {

  private final Wording wording;
  private final RecordTexts texts;

  DifferenceViews(Wording wording, RecordTexts texts) {
    this.wording = wording;
    this.texts = texts;
  }

  /**
   * A comparison as a page.
   *
   * @param suffix what pins links to the later revision; empty where that is not published
   * @param address the page's address
   * @param variant the one variant whose impact is shown, page by page; null for all
   * @param page the page of that variant's rows, counted from 1
   */
  DifferencePage page(
      Comparison comparison, String suffix, String address, @Nullable String variant, int page) {
    ImpactViews impact = new ImpactViews(wording, texts, suffix, address);
    if (variant != null) {
      return onlyOf(variant, comparison, impact, page);
    }
    return new DifferencePage(
        edits(comparison.after(), suffix).of(comparison.edits()),
        comparison.first(),
        impact.of(comparison.impact()),
        new RedrawnViews(comparison, wording, texts).draw(),
        null,
        null);
  }

  /** Edits alone, where what they make of the catalogue cannot be worked out. */
  DifferencePage edits(Catalogue names, List<EntryEdit> edits) {
    return new DifferencePage(
        edits(names, "").of(edits), true, List.of(), Redrawn.NONE, null, null);
  }

  private EditViews edits(Catalogue names, String suffix) {
    return new EditViews(
        new EntryNames(names, texts),
        new EntryFields(new PartWords(names, wording, texts)),
        texts,
        suffix);
  }

  private static DifferencePage onlyOf(
      String variant, Comparison comparison, ImpactViews impact, int page) {
    List<ImpactRow> rows = ImpactViews.byVariant(comparison.impact()).get(variant);
    if (rows == null) {
      throw Refusal.notFound("no-impact-on-variant", variant);
    }
    int count = (rows.size() + ImpactViews.SHOWN - 1) / ImpactViews.SHOWN;
    int current = Math.min(Math.max(page, 1), count);
    int from = (current - 1) * ImpactViews.SHOWN;
    ImpactGroup group = impact.page(rows, from, Math.min(from + ImpactViews.SHOWN, rows.size()));
    return new DifferencePage(
        List.of(),
        false,
        List.of(group),
        Redrawn.NONE,
        group.variant(),
        new Pages(group.all(), current, count));
  }
}
