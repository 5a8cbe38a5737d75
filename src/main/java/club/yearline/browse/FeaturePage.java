package club.yearline.browse;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One feature as its page shows it.
 *
 * @param name what it is called
 * @param description plain text
 * @param chapter chapter with its title
 * @param unit unit of a figure
 * @param visibility message key of from where it can be seen
 * @param exchange message key of how readily it is exchanged
 * @param values the values of a choice
 * @param families families to choose from, where not all are shown; else empty
 * @param chart its timeline as a drawing
 * @param rows its timeline as a table
 * @param changes its changes in order
 * @param retrofits what may be installed later
 * @param citations citations of the feature itself
 * @param findings what is doubtful about it
 */
record FeaturePage(
    String name,
    @Nullable String description,
    String chapter,
    @Nullable String unit,
    String visibility,
    String exchange,
    List<ValueCard> values,
    List<FamilyChoice.Link> families,
    @Nullable FeatureChart chart,
    List<AnswerRow> rows,
    List<ChangeItem> changes,
    List<RetrofitItem> retrofits,
    List<CitationLine> citations,
    List<FindingLine> findings) {

  /**
   * One value.
   *
   * @param label as a person says it
   * @param cue how to recognise it
   * @param picture address of its picture
   * @param credit who made the picture
   * @param ink whether the picture is a drawing in ink, to be inverted in the dark
   */
  record ValueCard(
      String label,
      @Nullable String cue,
      @Nullable String picture,
      @Nullable String credit,
      boolean ink) {}

  /**
   * One stretch of the timeline.
   *
   * @param variant designation
   * @param href page of the variant
   * @param place years, and serials where the year splits
   * @param expected the whole expected configuration there; null where no year is known
   * @param state code of the state
   * @param answer the answer in words
   * @param grade code of the evidence grade
   * @param disputed whether a source disputes it
   */
  record AnswerRow(
      String variant,
      String href,
      String place,
      @Nullable String expected,
      String state,
      String answer,
      String grade,
      boolean disputed) {}

  /**
   * One change.
   *
   * @param title its title
   * @param href its page
   * @param offering what was available new from it on
   * @param cutIns where it took effect, variant by variant
   * @param citations sources for and against
   * @param disputed whether a source speaks against it
   */
  record ChangeItem(
      String title,
      String href,
      String offering,
      List<CutInLine> cutIns,
      List<CitationLine> citations,
      boolean disputed) {}

  /** Variants whose cut-ins read the same, and where the change took effect in them. */
  record CutInLine(String variants, String words) {}

  /**
   * One retrofit.
   *
   * @param key its key
   * @param value the value that may be installed
   * @param variant designation
   * @param href page of the variant
   * @param range years and serials it applies to
   * @param document the approval or kit
   * @param mandatory whether an airworthiness directive calls for it
   * @param note plain text
   * @param citations its sources
   */
  record RetrofitItem(
      String key,
      String value,
      String variant,
      String href,
      String range,
      String document,
      boolean mandatory,
      @Nullable String note,
      List<CitationLine> citations) {}
}
