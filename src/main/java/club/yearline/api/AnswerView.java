package club.yearline.api;

import club.yearline.citation.Grade;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.State;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * An answer for one feature. A split has {@code stretches} instead of {@code offerings}.
 *
 * @param unit unit of a number feature
 */
record AnswerView(
    String feature,
    String name,
    String chapter,
    @Nullable String unit,
    @Coded(State.class) String state,
    @Schema(description = "Absent where the state is `splits`.")
        @Nullable List<OfferingView> offerings,
    @Schema(description = "There where the state is `splits`.")
        @Nullable List<StretchView> stretches,
    @Coded(Grade.class) String grade,
    boolean disputed,
    List<RetrofitView> retrofits,
    List<CitationView> citations) {

  /**
   * The answer of a catalogue.
   *
   * @param position the position it is for; null where it is for a stretch of them
   */
  static AnswerView of(Catalogue catalogue, Answer answer, @Nullable Position position) {
    Feature feature = answer.feature();
    boolean splits = answer.state() == State.SPLITS;
    return new AnswerView(
        feature.key(),
        feature.name(),
        feature.chapter(),
        feature.unit(),
        answer.state().code(),
        splits ? null : offerings(answer),
        splits ? each(answer.stretches(), StretchView::of) : null,
        answer.evidence().grade().code(),
        answer.evidence().disputed(),
        each(answer.retrofits(), r -> RetrofitView.of(catalogue, r, position)),
        CitationView.all(answer.evidence().citations()));
  }

  static @Nullable AnswerView ofNullable(
      Catalogue catalogue, @Nullable Answer answer, @Nullable Position position) {
    return answer == null ? null : of(catalogue, answer, position);
  }

  static List<AnswerView> all(Catalogue catalogue, List<Answer> answers, Position position) {
    return each(answers, answer -> of(catalogue, answer, position));
  }

  static List<OfferingView> offerings(Answer answer) {
    return each(answer.possible(), possible -> OfferingView.of(answer.feature(), possible));
  }

  /** Makes a view of each. A loop, because an answer has hundreds of lists of one or two. */
  static <T, V> List<V> each(List<T> shown, Function<T, V> view) {
    if (shown.isEmpty()) {
      return List.of();
    }
    List<V> views = new ArrayList<>(shown.size());
    for (T one : shown) {
      views.add(view.apply(one));
    }
    return views;
  }
}
