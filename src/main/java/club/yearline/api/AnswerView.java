package club.yearline.api;

import club.yearline.citation.Grade;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Possible;
import club.yearline.effectivity.State;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.ArrayList;
import java.util.List;
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
        splits ? answer.stretches().stream().map(StretchView::of).toList() : null,
        answer.evidence().grade().code(),
        answer.evidence().disputed(),
        answer.retrofits().stream().map(r -> RetrofitView.of(catalogue, r, position)).toList(),
        CitationView.all(answer.evidence().citations()));
  }

  static @Nullable AnswerView ofNullable(
      Catalogue catalogue, @Nullable Answer answer, @Nullable Position position) {
    return answer == null ? null : of(catalogue, answer, position);
  }

  static List<AnswerView> all(Catalogue catalogue, List<Answer> answers, Position position) {
    List<AnswerView> views = new ArrayList<>(answers.size());
    for (Answer answer : answers) {
      views.add(of(catalogue, answer, position));
    }
    return views;
  }

  static List<OfferingView> offerings(Answer answer) {
    List<OfferingView> views = new ArrayList<>(answer.possible().size());
    for (Possible possible : answer.possible()) {
      views.add(OfferingView.of(answer.feature(), possible));
    }
    return views;
  }
}
