package club.yearline.api;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Serial;
import club.yearline.effectivity.SerialText;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.Values;
import club.yearline.effectivity.Variant;
import club.yearline.estimation.Bounds;
import club.yearline.estimation.CutInQuestion;
import club.yearline.estimation.Gathered;
import club.yearline.estimation.Observed;
import club.yearline.estimation.Shows;
import club.yearline.web.Refusal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;

/** A posted question for a cut-in, read by a catalogue, or refused with all that is wrong. */
record CutInCase(
    Change change, Variant variant, CutInQuestion question, Bounds bounds, Gathered gathered) {

  /** Observations come without a day: the last one given counts. */
  private static final LocalDate ONE_DAY = LocalDate.EPOCH;

  private static final String OLD = "old";
  private static final String NEW = "new";

  static CutInCase of(CutInAsked asked, Catalogue catalogue) {
    Change change =
        catalogue
            .change(asked.change())
            .orElseThrow(() -> Refusal.notFound("unknown-change", asked.change()).at("change"));
    Variant variant =
        catalogue
            .variant(asked.variant())
            .orElseThrow(() -> Refusal.notFound("unknown-variant", asked.variant()).at("variant"));
    CutIn cutIn = cutIn(change, variant);
    Feature feature = catalogue.feature(change.feature()).orElseThrow();
    Series series = series(asked, catalogue, cutIn);
    CutInQuestion question = CutInQuestion.of(catalogue, change, variant.key(), series);
    List<Observed> observed = observed(asked, question, feature);
    return new CutInCase(
        change, variant, question, bounds(asked, question), question.gather(observed));
  }

  private static CutIn cutIn(Change change, Variant variant) {
    CutIn cutIn =
        change
            .cutIn(variant.key())
            .orElseThrow(
                () ->
                    Refusal.unprocessable(
                            "change-not-of-variant",
                            change.key(),
                            variant.designation(),
                            change.cutIns().stream()
                                .map(CutIn::variant)
                                .collect(Collectors.joining(", ")))
                        .at("variant"));
    if (cutIn.atStart()) {
      throw Refusal.unprocessable("cut-in-at-start", change.key(), variant.designation())
          .at("variant");
    }
    return cutIn;
  }

  /** The series asked for, or the one that the serials are read in. */
  private static Series series(CutInAsked asked, Catalogue catalogue, CutIn cutIn) {
    List<Series> possible = CutInQuestion.series(catalogue, cutIn);
    String names = possible.stream().map(Series::key).collect(Collectors.joining(", "));
    String wanted = asked.series();
    List<Series> fitting =
        possible.stream()
            .filter(s -> wanted == null ? readsAll(s, asked) : wanted.equals(s.key()))
            .toList();
    if (possible.size() == 1 && wanted == null) {
      return possible.get(0);
    }
    if (fitting.size() != 1) {
      String code = possible.isEmpty() ? "no-series" : "series-undecided";
      throw Refusal.unprocessable(code, names).at("series");
    }
    return fitting.get(0);
  }

  private static boolean readsAll(Series series, CutInAsked asked) {
    return asked.seen().stream().allMatch(o -> reads(series, o.serial()));
  }

  private static boolean reads(Series series, String text) {
    return serial(text, series).isPresent();
  }

  private static Bounds bounds(CutInAsked asked, CutInQuestion question) {
    long lo = bound("lo", asked.lo(), question.lowest(), question.series());
    long hi = bound("hi", asked.hi(), question.highest(), question.series());
    if (lo > hi) {
      Series series = question.series();
      throw Refusal.unprocessable(
              "bounds-reversed", series.show(Serial.of(lo)), series.show(Serial.of(hi)))
          .at("lo")
          .at("hi");
    }
    return new Bounds(lo, hi);
  }

  private static long bound(
      String member, @Nullable String own, OptionalLong recorded, Series series) {
    if (own == null) {
      return recorded.orElseThrow(
          () -> Refusal.unprocessable("bounds-missing", series.key()).at(member));
    }
    return serial(own, series)
        .map(Serial::ordinal)
        .orElseThrow(
            () -> Refusal.unprocessable("serial-not-of-series", own, series.key()).at(member));
  }

  private static List<Observed> observed(
      CutInAsked asked, CutInQuestion question, Feature feature) {
    List<Observed> observed = new ArrayList<>();
    Body.Faults faults = new Body.Faults();
    for (int i = 0; i < asked.seen().size(); i++) {
      CutInAsked.Observation one = asked.seen().get(i);
      String at = "observations[" + i + "].";
      Optional<Serial> serial = serial(one.serial(), question.series());
      Optional<Shows> shows = shows(one.value().strip(), question, feature);
      if (serial.isEmpty()) {
        String series = question.series().key();
        faults.add(at + "serial", "field.serial-not-of-series", one.serial(), series);
      }
      if (shows.isEmpty()) {
        faults.add(at + "value", "field.value-unknown", one.value(), known(feature));
      }
      if (serial.isPresent() && shows.isPresent()) {
        observed.add(observed(question.series(), serial.get(), shows.get()));
      }
    }
    faults.refuse(HttpStatus.UNPROCESSABLE_CONTENT);
    return observed;
  }

  private static Observed observed(Series series, Serial serial, Shows shows) {
    return new Observed(series.show(serial), series.key(), serial, shows, ONE_DAY);
  }

  private static Optional<Serial> serial(String text, Series series) {
    return text.strip().length() > SerialText.MAX_LENGTH ? Optional.empty() : series.read(text);
  }

  /** What a value says; empty where the feature has no such value. */
  private static Optional<Shows> shows(String value, CutInQuestion question, Feature feature) {
    if (value.equals(OLD)) {
      return Optional.of(Shows.OLD);
    }
    if (value.equals(NEW)) {
      return Optional.of(Shows.NEW);
    }
    boolean known =
        feature.isNumber() ? Values.number(value).isPresent() : feature.value(value).isPresent();
    return known ? Optional.of(question.shows(value)) : Optional.empty();
  }

  private static String known(Feature feature) {
    return Stream.concat(Stream.of(OLD, NEW), feature.values().stream().map(FeatureValue::key))
        .collect(Collectors.joining(", "));
  }
}
