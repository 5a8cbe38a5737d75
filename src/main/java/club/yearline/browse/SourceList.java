package club.yearline.browse;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The sources of one kind.
 *
 * @param kind message key of the kind
 * @param grade code of the grade it lends
 * @param sources the sources, by title
 */
record SourceList(String kind, String grade, List<Item> sources) {

  /**
   * One source in the list.
   *
   * @param title its title
   * @param href its page
   * @param identifier document number
   * @param author as recorded
   * @param issued its date in words
   * @param supports how many records it supports
   * @param disputes how many it disputes
   */
  record Item(
      String title,
      String href,
      @Nullable String identifier,
      @Nullable String author,
      @Nullable String issued,
      long supports,
      long disputes) {}
}
