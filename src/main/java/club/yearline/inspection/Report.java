package club.yearline.inspection;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What an inspection found, flat and ready: for the page, the printed report and the PDF.
 *
 * @param heading the claim, stamped
 * @param names the names it was sold under then
 * @param verdict the verdict's code
 * @param verdictTitle the verdict in a few words
 * @param verdictText what it means
 * @param tallies how many findings of each kind
 * @param other the variant and year that explains what was seen best, where it is not the claim
 * @param lines the findings, those to be explained first
 * @param called the mandatory modifications that the claim calls for
 * @param questions what to put to the logbooks
 */
public record Report(
    String heading,
    @Nullable String names,
    String verdict,
    String verdictTitle,
    String verdictText,
    List<Tally> tallies,
    @Nullable Other other,
    List<Line> lines,
    List<Called> called,
    List<String> questions) {

  /** The findings that a sheet of paper tells one by one. */
  public List<Line> toTell() {
    return lines.stream().filter(line -> !line.plain()).toList();
  }

  /** The features that are as built, each with what was seen. */
  public List<String> plain() {
    return lines.stream().filter(Line::plain).map(l -> l.name() + ": " + l.observed()).toList();
  }

  /** How many findings are of a kind. */
  public record Tally(String mark, String text) {}

  /** Another variant and year, in words, and where to go from here. */
  public record Other(String text, String inspectHref, @Nullable String differencesHref) {}

  /**
   * A finding.
   *
   * @param href where its feature stands on the page
   * @param chapter the feature's chapter
   * @param name the feature's name
   * @param observed what was seen
   * @param mark classes of its mark
   * @param word the finding in a word
   * @param says the finding in a sentence
   * @param plain whether there is nothing more to be said of it than that it is as built
   * @param notes where the value belongs, how readily it is exchanged, retrofits, what is missing
   */
  public record Line(
      String href,
      String chapter,
      String name,
      String observed,
      String mark,
      String word,
      String says,
      boolean plain,
      List<String> notes) {}

  /**
   * A mandatory modification.
   *
   * @param text what is called for, on which document
   * @param mark classes of the mark
   * @param word whether it was seen
   */
  public record Called(String text, String mark, String word) {}
}
