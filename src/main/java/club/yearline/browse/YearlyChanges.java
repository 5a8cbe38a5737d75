package club.yearline.browse;

import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Difference;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.State;
import club.yearline.effectivity.VariantModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** For each produced year of a variant, the features whose answer differs from the year before. */
record YearlyChanges(VariantModel model, Links links, Words words, Wording wording) {

  /**
   * A produced year.
   *
   * @param href its expected configuration
   * @param airframes how many its blocks hold; empty where no block has the year
   * @param since the produced year before it; null for the first
   * @param gap whether years without production lie between the two
   * @param rows what differs from that year
   */
  record Year(
      int year,
      String href,
      String airframes,
      @Nullable Integer since,
      boolean gap,
      List<Row> rows) {}

  /** A feature that differs; {@code mark} is the state of the new answer unless that is plain. */
  record Row(
      String feature,
      String href,
      String before,
      String after,
      @Nullable String mark,
      String markText,
      String grade,
      String gradeText,
      boolean disputed) {}

  List<Year> newestFirst() {
    List<Year> years = new ArrayList<>();
    List<Answer> before = null;
    Integer since = null;
    for (int year : model.years()) {
      List<Answer> now = model.expected(Position.of(model.variant(), year));
      years.add(0, year(year, since, before == null ? List.of() : rows(before, now)));
      before = now;
      since = year;
    }
    return years;
  }

  private Year year(int year, @Nullable Integer since, List<Row> rows) {
    double airframes = model.airframes(year);
    return new Year(
        year,
        links.expected(model.variant().key(), year, null),
        airframes > 0 ? wording.airframes(airframes) : "",
        since,
        since != null && since < year - 1,
        rows);
  }

  private List<Row> rows(List<Answer> before, List<Answer> now) {
    return Difference.pair(before, now).stream()
        .filter(Difference::differs)
        .map(
            d -> row(d.feature(), Objects.requireNonNull(d.from()), Objects.requireNonNull(d.to())))
        .toList();
  }

  private Row row(Feature feature, Answer before, Answer after) {
    String state = after.state().code();
    String grade = after.evidence().grade().code();
    boolean plain = after.state() == State.SETTLED || after.state() == State.UNRECORDED;
    return new Row(
        feature.name(),
        links.feature(feature.key()),
        wording.answer(before),
        wording.answer(after),
        plain ? null : state,
        words.mark("state." + state),
        grade,
        words.grade(grade),
        after.evidence().disputed());
  }
}
