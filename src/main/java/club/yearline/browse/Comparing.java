package club.yearline.browse;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Finding;
import club.yearline.effectivity.Records;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * Shows other modules' pages what lies between two states of the catalogue, published or not, as
 * the revisions' own pages do: fragment {@code records/parts :: difference}.
 */
@Component
public class Comparing {

  private final Between between;
  private final DifferenceViews views;
  private final RecordTexts texts;

  Comparing(Between between, DifferenceViews views, RecordTexts texts) {
    this.between = between;
    this.views = views;
    this.texts = texts;
  }

  /**
   * What the fragment shows.
   *
   * @param address the page's own address, to which a variant can be added
   * @param variant the one variant whose impact is shown, page by page; null for all
   * @param page the page of that variant's rows, counted from 1
   */
  public Object between(
      Catalogue before, Catalogue after, String address, @Nullable String variant, int page) {
    return views.page(between.states(before, after), "", address, variant, page);
  }

  /** What differs between the entries of a state and other records, consistent or not. */
  public Object edits(Catalogue before, Records after) {
    return views.edits(before, Edits.between(before.records(), after));
  }

  /** Findings as the fragment {@code records/parts :: findings} shows them. */
  public List<?> findings(List<Finding> findings) {
    return findings.stream().map(finding -> FindingLine.of(finding, texts)).toList();
  }
}
