package club.yearline.browse;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One source with everything that cites it.
 *
 * @param title its title
 * @param kind message key of its kind
 * @param grade code of the grade it lends
 * @param author as recorded
 * @param publisher who published it
 * @param identifier document number
 * @param issued its date in words
 * @param url http or https address
 * @param accessed day it was read online
 * @param note plain text
 * @param groups what cites it, by kind of record
 */
record SourcePage(
    String title,
    String kind,
    String grade,
    @Nullable String author,
    @Nullable String publisher,
    @Nullable String identifier,
    @Nullable String issued,
    @Nullable String url,
    @Nullable String accessed,
    @Nullable String note,
    List<Group> groups) {

  /** Citations from records of one kind, named by a message key. */
  record Group(String kind, List<Item> items, int hidden) {}

  /**
   * One citation.
   *
   * @param name name of the record that cites
   * @param href page of the record
   * @param locator page, paragraph or figure
   * @param supports whether the source speaks for it
   * @param variant designation of the variant whose cut-in alone it bears on
   * @param note plain text
   */
  record Item(
      String name,
      String href,
      @Nullable String locator,
      boolean supports,
      @Nullable String variant,
      @Nullable String note) {}
}
