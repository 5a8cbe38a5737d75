package club.yearline.api;

import club.yearline.effectivity.State;
import club.yearline.effectivity.Stretch;
import java.util.List;

/** A stretch of serials with one answer. */
record StretchView(
    String series,
    String first,
    String last,
    double airframes,
    @Coded(State.class) String state,
    List<OfferingView> offerings) {

  static StretchView of(Stretch stretch) {
    return new StretchView(
        stretch.series().key(),
        stretch.firstText(),
        stretch.lastText(),
        stretch.airframes(),
        stretch.answer().state().code(),
        AnswerView.offerings(stretch.answer()));
  }
}
