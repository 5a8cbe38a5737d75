package club.yearline.effectivity;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.testing.SmallCatalogue;
import java.util.List;
import org.junit.jupiter.api.Test;

/** When two answers are different (domain section 5). */
class DifferenceTest {

  private static final Catalogue SMALL = Catalogue.of(SmallCatalogue.records());
  private static final Change ONE = change("one", "120", Fit.STANDARD);
  private static final Change SAME = change("same", "120.0", Fit.STANDARD);
  private static final Change OPTION = change("option", "120", Fit.OPTION);
  private static final Change OTHER = change("other", "145", Fit.STANDARD);

  @Test
  void equalOfferingsOfDifferentChangesAreNoDifference() {
    assertThat(answer(State.SETTLED, ONE).differsFrom(answer(State.SETTLED, SAME))).isFalse();
    assertThat(answer(State.SETTLED, ONE).agreesWith(answer(State.SETTLED, SAME))).isFalse();
  }

  @Test
  void theOrderWithinAnOfferingIsNoDifference() {
    Change forth = change("forth", List.of(standard("1"), standard("2")));
    Change back = change("back", List.of(standard("2"), standard("1")));
    assertThat(answer(State.SETTLED, forth).differsFrom(answer(State.SETTLED, back))).isFalse();
  }

  @Test
  void valuesFitsStatesAndNumbersOfOfferingsAreDifferences() {
    Answer settled = answer(State.SETTLED, ONE);
    for (Answer other :
        List.of(
            answer(State.SETTLED, OTHER),
            answer(State.SETTLED, OPTION),
            answer(State.TRANSITION, ONE, OTHER),
            answer(State.UNRECORDED))) {
      assertThat(settled.differsFrom(other)).isTrue();
      assertThat(other.differsFrom(settled)).isTrue();
    }
    Answer transition = answer(State.TRANSITION, ONE, OTHER);
    assertThat(transition.differsFrom(answer(State.OPEN, ONE, OTHER))).isTrue();
    assertThat(transition.differsFrom(answer(State.TRANSITION, OTHER, ONE))).isTrue();
    assertThat(transition.differsFrom(answer(State.TRANSITION, ONE, OTHER, OTHER))).isTrue();
    assertThat(transition.differsFrom(answer(State.TRANSITION, SAME, OTHER))).isFalse();
  }

  @Test
  void splitsDifferByTheSequenceOfTheirStretchesNotByTheirSerials() {
    Answer one = answer(State.SETTLED, ONE);
    Answer other = answer(State.SETTLED, OTHER);
    Answer split = splits(stretch(1, one), stretch(15, other));
    assertThat(split.differsFrom(splits(stretch(1, one), stretch(12, other)))).isFalse();
    assertThat(split.differsFrom(splits(stretch(1, other), stretch(15, one)))).isTrue();
    assertThat(split.differsFrom(splits(stretch(1, one), stretch(9, other), stretch(15, one))))
        .isTrue();
    assertThat(split.differsFrom(one)).isTrue();
  }

  @Test
  void pairsTwoConfigurationsFeatureByFeature() {
    List<Difference> pairs = Difference.pair(expected("la-2", 1956), expected("la-2a", 1958));
    assertThat(pairs.stream().map(d -> d.feature().key()))
        .containsExactly("door-latch", "power", "landing-light");
    assertThat(pairs).allMatch(Difference::differs);
    assertThat(pairs.get(1).to()).isNull();
    assertThat(pairs.get(2).from()).isNull();
  }

  @Test
  void aPositionDoesNotDifferFromItself() {
    List<Answer> year = expected("la-2", 1957);
    assertThat(Difference.pair(year, year)).hasSize(2).noneMatch(Difference::differs);
  }

  @Test
  void aYearThatSplitsDiffersFromTheYearBefore() {
    assertThat(Difference.pair(expected("la-2", 1956), expected("la-2", 1957)))
        .allMatch(Difference::differs)
        .anyMatch(d -> d.to() != null && d.to().state() == State.SPLITS);
  }

  private static List<Answer> expected(String variant, int year) {
    return SMALL.expected(Position.of(SMALL.variant(variant).orElseThrow(), year));
  }

  private static Answer answer(State state, Change... changes) {
    List<Possible> possible =
        List.of(changes).stream()
            .map(c -> new Possible(c, c.cutIns().get(0), state == State.OPEN))
            .toList();
    return new Answer(power(), state, possible, List.of(), Evidence.NONE, List.of());
  }

  private static Answer splits(Stretch... stretches) {
    return new Answer(
        power(), State.SPLITS, List.of(), List.of(stretches), Evidence.NONE, List.of());
  }

  private static Stretch stretch(long first, Answer answer) {
    Series series = SMALL.series("lt").orElseThrow();
    return new Stretch(series, Serial.of(first), Serial.of(first + 2), 3, answer);
  }

  private static Feature power() {
    return SMALL.feature("power").orElseThrow();
  }

  private static Change change(String key, String value, Fit fit) {
    return change(key, List.of(new Offered(value, fit, null)));
  }

  private static Offered standard(String value) {
    return new Offered(value, Fit.STANDARD, null);
  }

  private static Change change(String key, List<Offered> offering) {
    return new Change(key, "power", key, null, offering, List.of(CutIn.atStart("la-2")), List.of());
  }
}
