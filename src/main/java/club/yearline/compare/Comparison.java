package club.yearline.compare;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Variant-years side by side, as shown: flat and ready, so that the template only prints.
 *
 * @param heads the variant-years
 * @param figures what is recorded
 * @param derived what follows from it
 */
public record Comparison(List<Head> heads, List<FigureRow> figures, List<FigureRow> derived) {

  /**
   * A variant-year.
   *
   * @param letter by which drawings name it
   * @param name designation and year
   * @param href its expected configuration
   * @param withoutHref the page without it
   */
  public record Head(String letter, String name, String href, String withoutHref) {}

  /**
   * A figure of all variant-years.
   *
   * @param name what it is
   * @param differs whether they differ
   * @param word that they do, or not; empty where there is nothing to compare
   * @param origin where it comes from; null for what is worked out or not recorded at all
   * @param figures one for each variant-year
   */
  public record FigureRow(
      String name,
      boolean differs,
      String word,
      @Nullable Origin origin,
      List<FigureCell> figures) {}

  /**
   * One figure of one variant-year.
   *
   * @param head the variant-year
   * @param text the figure, or why there is none
   * @param missing whether there is none
   * @param beside how it stands to the first variant-year's; null where that cannot be said
   * @param parts the figure of each stretch of serials, where the year splits
   */
  public record FigureCell(
      String head, String text, boolean missing, @Nullable String beside, List<String> parts) {}

  /**
   * Where one figure comes from.
   *
   * @param mark classes of the mark of the poorest grade
   * @param grade that grade in words
   * @param disputed whether a source speaks against one of them
   * @param feature the feature's page
   * @param proofs for each variant-year, or for several that rest on the same
   */
  public record Origin(
      String mark, String grade, boolean disputed, String feature, List<Proof> proofs) {}

  /**
   * What figures rest on.
   *
   * @param whose the variant-years
   * @param mark classes of the grade's mark
   * @param grade the grade in words
   * @param disputed whether a source speaks against it
   * @param changes the changes that decide it
   * @param cited the sources for and against
   */
  public record Proof(
      String whose,
      String mark,
      String grade,
      boolean disputed,
      List<Decisive> changes,
      List<Reference> cited) {}

  /** A change that decides a figure. */
  public record Decisive(String title, String href, String when) {}

  /**
   * A citation.
   *
   * @param stance for or against, in words
   * @param against whether it disputes
   * @param title the source's title
   * @param href the source's page
   * @param where locator and note; empty where neither is recorded
   */
  public record Reference(
      String stance, boolean against, String title, String href, String where) {}
}
