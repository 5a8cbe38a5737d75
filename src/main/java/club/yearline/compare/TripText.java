package club.yearline.compare;

import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.List;

/** Says a trip in one line. */
final class TripText {

  private final Phrases phrases;
  private final Told told;

  TripText(Phrases phrases, Told told) {
    this.phrases = phrases;
    this.told = told;
  }

  String of(Trip trip) {
    List<String> parts = new ArrayList<>();
    String weight = told.text(trip.peopleWeight());
    parts.add(told.text(trip.distance()));
    if (trip.people() != null) {
      parts.add(phrases.count("compare.trip.people", trip.people(), weight));
    } else if (trip.peopleWeight().value().signum() > 0) {
      parts.add(phrases.of("compare.trip.weight", weight));
    }
    if (trip.bags().value().signum() > 0) {
      parts.add(phrases.of("compare.trip.bags", told.text(trip.bags())));
    }
    parts.add(phrases.of("compare.trip.reserve", minutes(trip.reserve())));
    return String.join(phrases.of("compare.comma"), parts);
  }

  /** A reserve in minutes, without unit. */
  static String minutes(Amount reserve) {
    return reserve.in(Scale.MINUTE).number();
  }
}
