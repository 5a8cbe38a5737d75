package club.yearline.api;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Possible;
import club.yearline.effectivity.State;
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
    String state,
    @Nullable List<OfferingView> offerings,
    @Nullable List<StretchView> stretches,
    String grade,
    boolean disputed,
    List<RetrofitView> retrofits,
    List<CitationView> citations) {

  static AnswerView of(Answer answer) {
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
        answer.retrofits().stream().map(RetrofitView::of).toList(),
        answer.evidence().citations().stream().map(CitationView::of).toList());
  }

  static @Nullable AnswerView ofNullable(@Nullable Answer answer) {
    return answer == null ? null : of(answer);
  }

  static List<AnswerView> all(List<Answer> answers) {
    List<AnswerView> views = new ArrayList<>(answers.size());
    for (Answer answer : answers) {
      views.add(of(answer));
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
