package club.yearline.inspection;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The walk-around list, flat and ready, so that the template only prints.
 *
 * @param groups the features by chapter
 */
public record Walk(List<Group> groups) {

  /** Features of one chapter, and the address of their place on the page. */
  public record Group(String id, String href, String code, String title, List<Entry> entries) {}

  /**
   * A feature to look at.
   *
   * @param id where the page can be jumped to
   * @param key the feature's key
   * @param name the feature's name
   * @param href the feature's page
   * @param place from where it is seen
   * @param field the name of its field
   * @param unit unit of a number; null for a choice
   * @param number what stands in the number's field; null for a choice
   * @param fault what is wrong with it
   * @param options the values of a choice
   * @param unlooked whether it was not looked at
   * @param files the name of the field of its photographs
   * @param found what was found
   */
  public record Entry(
      String id,
      String key,
      String name,
      String href,
      String place,
      String field,
      @Nullable String unit,
      @Nullable String number,
      @Nullable String fault,
      List<Option> options,
      boolean unlooked,
      String files,
      @Nullable Found found) {

    /** Where its finding stands. */
    public String foundId() {
      return "found-" + key;
    }
  }

  /** A value that can be chosen. */
  public record Option(
      String id,
      String value,
      String label,
      @Nullable String cue,
      @Nullable String picture,
      boolean chosen) {}

  /**
   * A finding as shown under its feature.
   *
   * @param mark classes of its mark
   * @param word the finding in a word
   * @param says the finding in a sentence
   */
  public record Found(String mark, String word, String says) {}
}
