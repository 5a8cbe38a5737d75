package club.yearline.news;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Something that a person is told. It is put into words when it is read, so that it names people
 * and entries as they are called by then.
 *
 * @param id its number
 * @param person whom it is for
 * @param about what it tells
 * @param sentAt when it came
 * @param read whether it was read
 */
record Message(long id, long person, About about, Instant sentAt, boolean read) {

  /** What happened. */
  enum Kind {
    /** A revision touched what the person watches. */
    REVISION,
    /** For moderators: a correction was handed in. */
    SUBMITTED,
    /** For moderators: its author has said something about a correction. */
    ANSWERED,
    SENT_BACK,
    MENDED,
    APPROVED,
    REJECTED,
    /** Somebody has said something about the person's correction. */
    REMARK,
    /** For moderators: somebody asks to join. */
    JOIN_ASKED;

    /** The word used in message keys. */
    String code() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /**
   * What a message tells.
   *
   * @param kind what happened
   * @param subject number of the revision, the correction or the request
   * @param title what the correction is about; null for others
   * @param actor number of the account of who did it; null where that does not matter
   * @param touched what of the watched a revision touched
   */
  record About(
      Kind kind,
      long subject,
      @Nullable String title,
      @Nullable Long actor,
      List<Watched> touched) {

    private static final int LONGEST_TITLE = 300;

    /** More than a message names, so that it is seen that there are more. */
    static final int MOST_TOUCHED = 20;

    About {
      title = title == null || title.length() <= LONGEST_TITLE ? title : cut(title);
      touched = touched.stream().limit(MOST_TOUCHED).toList();
    }

    static About revision(int number, List<Watched> touched) {
      return new About(Kind.REVISION, number, null, null, touched);
    }

    static About correction(Kind kind, long number, String title, long actor) {
      return new About(kind, number, title, actor, List.of());
    }

    static About joinAsked(long request) {
      return new About(Kind.JOIN_ASKED, request, null, null, List.of());
    }

    /** The page of what it is about. */
    String path() {
      return switch (kind) {
        case REVISION -> "/revisions/" + subject;
        case JOIN_ASKED -> "/admin/joining";
        default -> "/corrections/" + subject;
      };
    }

    /** As stored: one a line. */
    @Nullable String touchedText() {
      return touched.isEmpty()
          ? null
          : String.join("\n", touched.stream().map(Watched::toString).toList());
    }

    static List<Watched> touched(@Nullable String text) {
      return text == null
          ? List.of()
          : Arrays.stream(text.split("\n")).flatMap(line -> Watched.parse(line).stream()).toList();
    }

    private static String cut(String text) {
      int end = Character.isHighSurrogate(text.charAt(LONGEST_TITLE - 2)) ? 2 : 1;
      return text.substring(0, LONGEST_TITLE - end) + "…";
    }
  }
}
