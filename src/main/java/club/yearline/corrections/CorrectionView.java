package club.yearline.corrections;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One correction as its page shows it.
 *
 * @param id its number
 * @param version what forms send back, so that a stale one is noticed
 * @param title what it is about
 * @param state code of its state
 * @param next what happens next, in words
 * @param author name of its author
 * @param changed when it last changed, in ISO form, UTC
 * @param origin code of where it comes from
 * @param revision the revision that it became; null where it is none
 * @param entries what it does to each entry
 * @param more how many entries are not listed
 * @param grounds what it stands on
 * @param attached photographs and documents
 * @param pictures pictures that it would publish, the first of them
 * @param events what happened, oldest first
 * @param others others that wait and change the same
 * @param may what the reader may do with it
 * @param impact what it would make of the catalogue; null where it is decided
 */
record CorrectionView(
    long id,
    int version,
    String title,
    String state,
    String next,
    String author,
    String changed,
    String origin,
    @Nullable Integer revision,
    List<EntryLine> entries,
    int more,
    List<GroundLine> grounds,
    Attached attached,
    List<FileLine> pictures,
    List<EventLine> events,
    List<Line> others,
    May may,
    @Nullable Outlook impact) {

  /**
   * What it does to one entry.
   *
   * @param kind code of its kind
   * @param key its key
   * @param name what it is called
   * @param what code of what is done: new, changed, withdrawn, same
   * @param faults what cannot be read, in words
   */
  record EntryLine(String kind, String key, String name, String what, List<String> faults) {}

  /**
   * A source that it stands on.
   *
   * @param source key of the source
   * @param title its title; the key where it is not in the library yet
   * @param locator where in it
   * @param stance code of whether it supports or disputes
   * @param note what else is said; null for nothing
   */
  record GroundLine(
      String source, String title, String locator, String stance, @Nullable String note) {}

  /**
   * Something that happened.
   *
   * @param words who did what
   * @param at when, in ISO form, UTC
   * @param note what was said; null for nothing
   * @param before the mended entry as the author had it, cell by cell; empty for all else
   */
  record EventLine(String words, String at, @Nullable String note, List<String> before) {}

  /**
   * A correction in a list.
   *
   * @param id its number
   * @param title what it is about
   * @param state code of its state
   * @param author name of its author
   * @param changed when it last changed
   * @param entries how many entries it changes, in words
   */
  record Line(long id, String title, String state, String author, String changed, String entries) {}

  /**
   * What the reader may do.
   *
   * @param write change it and hand it in
   * @param withdraw give it up
   * @param mend mend slips and send it back
   * @param decide approve or reject it
   */
  record May(boolean write, boolean withdraw, boolean mend, boolean decide) {}

  /**
   * What it would make of the catalogue.
   *
   * @param onto the newest revision, with which it was compared
   * @param clashes whether something clashes with what was published since
   * @param blocked whether it cannot be looked at as a whole
   * @param errors whether errors stand in the way
   * @param publishable whether it can be approved as it is
   * @param added findings that it brings
   * @param removed findings that it mends
   * @param difference edits and changed answers; null where they cannot be worked out
   */
  record Outlook(
      int onto,
      boolean clashes,
      boolean blocked,
      boolean errors,
      boolean publishable,
      List<?> added,
      List<?> removed,
      @Nullable Object difference) {}
}
