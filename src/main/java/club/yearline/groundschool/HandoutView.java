package club.yearline.groundschool;

import club.yearline.browse.FeatureChart;
import club.yearline.browse.Timelines;
import club.yearline.citing.Cited;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A hand-out as its page and its PDF show it.
 *
 * @param title its title
 * @param remarks own remarks, a paragraph each
 * @param scope variants and years in words
 * @param sections the features
 * @param notes the sources, numbered from 1
 * @param revision the revision that it shows
 * @param published the day of that revision
 * @param address the permalink
 * @param code the square code
 */
record HandoutView(
    String title,
    List<String> remarks,
    String scope,
    List<Section> sections,
    List<Note> notes,
    int revision,
    String published,
    String address,
    Code code) {

  /**
   * One feature.
   *
   * @param number its place, from 1
   * @param chapter its chapter
   * @param chart its timeline; null where no year is left to draw
   * @param picture name of the timeline among the PDF's pictures
   * @param keys what patterns and letters of the timeline mean
   */
  record Section(
      int number,
      String name,
      String chapter,
      @Nullable String description,
      @Nullable FeatureChart chart,
      String picture,
      List<Key> keys,
      List<List<Value>> values,
      List<Timelines.Row> rows,
      List<Changed> changes) {}

  /** What a pattern and a letter of a timeline mean. */
  record Key(String fill, String letter, String label) {}

  /**
   * A value.
   *
   * @param src its picture on the page; null where there is none
   * @param picture its picture among the PDF's; null where there is none
   */
  record Value(
      String label,
      @Nullable String cue,
      @Nullable String src,
      @Nullable String picture,
      boolean ink,
      @Nullable String credit) {}

  /** A change, with the numbers of its notes. */
  record Changed(String title, String offering, List<String> cutIns, List<Mark> marks) {}

  /** A pointer to a note. */
  record Mark(int number, String text, boolean supports) {}

  /** A source as a numbered note. */
  record Note(int number, String title, Cited cited) {}

  /**
   * The square code.
   *
   * @param size squares along a side
   * @param path the dark squares
   * @param text what it says
   * @param whole whether it leads to the hand-out with its remarks
   */
  record Code(int size, String path, String text, boolean whole) {}
}
