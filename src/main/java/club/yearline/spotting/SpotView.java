package club.yearline.spotting;

import club.yearline.web.Choice;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The page as shown: flat and ready, so that the template only prints.
 *
 * @param fresh whether nothing was told yet
 * @param choosing whether a family must be chosen first, because there are so many
 * @param action where the forms go
 * @param state what the forms send along
 * @param stateOfAll the same without the family
 * @param families the families to choose from, all of them first
 * @param family the one chosen; empty for all
 * @param places where one may stand
 * @param soFar the likeliest, in words; null where nothing is ranked
 * @param open how much is in question, in words
 * @param asking the question; null where none is left
 * @param onward what to do where no question is left; null where one is
 * @param answers what was told, and what could not be
 * @param spans the ranking, likeliest first
 * @param more the rest of it, as far as it is shown
 * @param rest what is not shown, in words; null where all is
 * @param misfit that nothing fits, in words; null where something does
 * @param chapters all questions
 */
public record SpotView(
    boolean fresh,
    boolean choosing,
    String action,
    List<Part> state,
    List<Part> stateOfAll,
    List<Choice> families,
    String family,
    List<Place> places,
    @Nullable String soFar,
    String open,
    @Nullable Asking asking,
    @Nullable Onward onward,
    List<Given> answers,
    List<Span> spans,
    List<Span> more,
    @Nullable String rest,
    @Nullable String misfit,
    List<Chapter> chapters) {

  /** A part of the address, as a form sends it. */
  public record Part(String name, String value) {}

  /** A place to stand, and whether the person stands there. */
  public record Place(String label, String href, boolean here) {}

  /**
   * A question.
   *
   * @param name the feature's name
   * @param key the feature's key
   * @param description what the feature is; null where nobody wrote it
   * @param place from where it can be seen
   * @param bits how much it is expected to tell, in words; null where it tells nothing
   * @param tiles the values to tap
   * @param figure whether a number may be typed
   * @param unit the number's unit; null for what is counted or a choice
   * @param typed the number as typed, where it could not be read
   * @param state what the form of the number sends along
   * @param skipHref "can't tell"
   * @param pictured whether a value has a picture
   */
  public record Asking(
      String name,
      String key,
      @Nullable String description,
      String place,
      @Nullable String bits,
      List<Tile> tiles,
      boolean figure,
      @Nullable String unit,
      @Nullable String typed,
      List<Part> state,
      String skipHref,
      boolean pictured) {}

  /** A value to tap. */
  public record Tile(
      String label,
      @Nullable String cue,
      @Nullable String picture,
      boolean ink,
      boolean chosen,
      String href) {}

  /** Where no question is left: why, and the places from where there still are some. */
  public record Onward(String text, List<Place> places) {}

  /**
   * What was told about a feature.
   *
   * @param key the feature's key
   * @param name the feature's name
   * @param value the value; null where the person could not tell
   * @param note why it does not count; null where it does
   */
  public record Given(String key, String name, @Nullable String value, @Nullable String note) {}

  /**
   * Neighbouring years that nothing seen tells apart.
   *
   * @param name the variant
   * @param href the variant's page
   * @param years its years
   * @param share their part of all, in words
   * @param width the same as a length, 0 to 100
   * @param speaksFor what speaks for it; null for nothing
   * @param speaksAgainst what speaks against it; null for nothing
   * @param each the years one by one
   */
  public record Span(
      String name,
      String href,
      String years,
      String share,
      String width,
      @Nullable String speaksFor,
      @Nullable String speaksAgainst,
      List<Year> each) {}

  /** One year, and where it leads. */
  public record Year(String year, String share, String expectedHref, String inspectHref) {}

  /** The questions of a chapter. */
  public record Chapter(String code, String title, List<Item> items) {}

  /** A feature that may be asked about, with what is known of it. */
  public record Item(String key, String name, @Nullable String note) {}
}
