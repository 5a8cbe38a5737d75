package club.yearline.fleet;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One airframe, as shown.
 *
 * @param id its number
 * @param heading mark and serial
 * @param what variant and year
 * @param stamps the data plate's fields
 * @param notices what is to be known before reading on
 * @param remarks plain text; null where there is none
 * @param own whether it is the reader's own
 * @param shared whether every member may see it
 * @param serialShown whether its serial may be named where it serves as evidence
 * @param hasSerial whether a serial is known
 * @param differences where it differs from how it was built
 * @param differing how many those are, in words; null where nothing was looked at
 * @param expectedHref what it should have
 * @param chapters what was seen
 */
public record AirframeView(
    long id,
    String heading,
    String what,
    List<AirframeStamp> stamps,
    List<String> notices,
    @Nullable String remarks,
    boolean own,
    boolean shared,
    boolean serialShown,
    boolean hasSerial,
    List<FleetView.Spot> differences,
    @Nullable String differing,
    @Nullable String expectedHref,
    List<SeenChapter> chapters) {

  /** A field of the data plate; the address is null where it leads nowhere. */
  public record AirframeStamp(String name, String text, @Nullable String href) {}

  /** The features of a chapter that were looked at. */
  public record SeenChapter(String code, String title, List<SeenFeature> features) {}

  /**
   * A feature that was looked at.
   *
   * @param id where it stands on the page
   * @param name its name
   * @param href its page
   * @param mark classes of the mark
   * @param word how what was seen stands to what it should be
   * @param picture address of a drawing of the value seen; null where there is none
   * @param expected what it should be; null where the value seen is that
   * @param latest what was seen last
   * @param earlier what was seen before, the latest first
   * @param again where it is recorded anew
   */
  public record SeenFeature(
      String id,
      String name,
      String href,
      String mark,
      String word,
      @Nullable String picture,
      @Nullable String expected,
      SeenLine latest,
      List<SeenLine> earlier,
      String again) {}

  /**
   * An observation.
   *
   * @param id its number
   * @param value what was seen
   * @param by the day and who looked
   * @param note plain text; null where there is none
   * @param photographs addresses and texts
   */
  public record SeenLine(
      long id, String value, String by, @Nullable String note, List<SeenPhoto> photographs) {}

  /** A photograph: its address, that of a small one, and what it shows. */
  public record SeenPhoto(String href, String small, String alt) {}
}
