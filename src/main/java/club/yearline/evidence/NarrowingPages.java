package club.yearline.evidence;

import club.yearline.accounts.Actor;
import club.yearline.catalog.Reading;
import club.yearline.corrections.Narrowing;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Serial;
import club.yearline.effectivity.Series;
import club.yearline.estimation.Bounds;
import club.yearline.estimation.CutInQuestion;
import club.yearline.fleet.UsedObservation.Place;
import club.yearline.fleet.UsedObservation.Use;
import club.yearline.fleet.UsedObservation.Uses;
import club.yearline.web.Phrases;
import club.yearline.web.Refusal;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.util.UriComponentsBuilder;

/** From what was weighed to a correction that narrows the record by it. */
@Controller
class NarrowingPages {

  private final Weighing weighing;
  private final Narrowings narrowings;
  private final Phrases phrases;

  NarrowingPages(Weighing weighing, Narrowings narrowings, Phrases phrases) {
    this.weighing = weighing;
    this.narrowings = narrowings;
    this.phrases = phrases;
  }

  /** Prepares the draft and opens its form, so that everything can still be changed. */
  @PostMapping("/corrections/narrow")
  String narrow(
      @RequestParam String change,
      @RequestParam String variant,
      @RequestParam String series,
      @RequestParam(defaultValue = "") String lo,
      @RequestParam(defaultValue = "") String hi,
      @RequestParam(defaultValue = "") String token,
      Reading reading,
      Actor actor) {
    Weighed weighed = weigh(reading, change, variant, series, lo, hi);
    if (!weighed.narrows()) {
      throw Refusal.unprocessable("nothing-narrowed", change, weighed.variant().designation());
    }
    long correction = begin(actor, narrowing(weighed), uses(weighed), token);
    return "redirect:"
        + UriComponentsBuilder.fromPath("/corrections/{id}/edit")
            .queryParam("kind", "change")
            .queryParam("key", "{key}")
            .encode()
            .buildAndExpand(correction, change)
            .toUriString();
  }

  private long begin(Actor actor, Narrowing narrowing, Uses uses, String token) {
    try {
      return narrowings.begin(actor, narrowing, uses, token);
    } catch (DataIntegrityViolationException sentTwiceAtOnce) {
      return narrowings.begin(actor, narrowing, uses, token);
    }
  }

  private Weighed weigh(
      Reading reading, String key, String variant, String series, String lo, String hi) {
    Change change =
        reading.catalogue().change(key).orElseThrow(() -> Refusal.notFound("unknown-change", key));
    CutInQuestion question =
        Weighing.questions(reading.catalogue(), change).stream()
            .filter(q -> q.cutIn().variant().equals(variant) && q.series().key().equals(series))
            .findFirst()
            .orElseThrow(() -> Refusal.notFound("no-cut-in", key, variant, series));
    Bounds bounds = Asked.of(question, lo, hi).bounds();
    if (bounds == null) {
      throw Refusal.unprocessable("bounds-unreadable", lo, hi);
    }
    return weighing.weigh(reading.catalogue(), change, question, bounds, false);
  }

  private Narrowing narrowing(Weighed weighed) {
    int count = weighed.airframes().size();
    String day = weighed.latest().map(Object::toString).orElse("");
    return new Narrowing(
        weighed.change().key(),
        narrowed(weighed),
        phrases.of(
            "evidence.narrow.title", weighed.change().title(), weighed.variant().designation()),
        phrases.count("evidence.narrow.locator", count, day),
        phrases.of(
            "evidence.narrow.note",
            weighed.gathered().countOld(),
            weighed.gathered().countNew(),
            weighed.estimate().suspects().size()));
  }

  /** The record with the ends that the airframes tell; an end that they do not stays as it was. */
  private static CutIn narrowed(Weighed weighed) {
    CutIn record = weighed.question().cutIn();
    Bounds window = weighed.window();
    Series series = weighed.series();
    return new CutIn(
        record.variant(),
        false,
        record.firstYear(),
        record.settledYear(),
        series.key(),
        end(window.first(), weighed.question().lowest(), record.firstSerial(), series),
        end(window.last(), weighed.question().highest(), record.settledSerial(), series));
  }

  private static @Nullable String end(
      long found, OptionalLong recorded, @Nullable String serial, Series series) {
    return recorded.isPresent() && recorded.getAsLong() == found
        ? serial
        : series.show(Serial.of(found));
  }

  private static Uses uses(Weighed weighed) {
    Bounds window = weighed.window();
    return new Uses(
        weighed.change().key(),
        weighed.variant().key(),
        weighed.airframes().stream()
            .map(a -> new Use(a.observation(), a.isNew(), place(a.serial().ordinal(), window)))
            .toList());
  }

  private static Place place(long ordinal, Bounds window) {
    if (ordinal < window.first()) {
      return Place.BELOW;
    }
    return ordinal < window.last() ? Place.INSIDE : Place.ABOVE;
  }
}
