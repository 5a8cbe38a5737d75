package club.yearline.evidence;

import club.yearline.catalog.Wording;
import club.yearline.estimation.Bounds;
import club.yearline.estimation.Estimate;
import club.yearline.estimation.Gathered;
import club.yearline.estimation.LeftOut;
import club.yearline.estimation.Suspect;
import club.yearline.estimation.WindowStretches;
import club.yearline.evidence.EvidencePage.Findings;
import club.yearline.evidence.EvidencePage.Row;
import club.yearline.evidence.Weighed.Stood;
import club.yearline.web.Phrases;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Says in words what came of weighing. */
@Component
class EvidenceWords {

  /** The most airframes that a table lists; a page has to stay small. */
  private static final int MOST_ROWS = 200;

  /** The logarithm of a factor that tells nothing. */
  private static final double EITHER = Math.log(1.5);

  /** Beyond this a factor is only said to be so great. */
  private static final double GREATEST_FACTOR = 1e6;

  private final Phrases phrases;
  private final Wording wording;

  EvidenceWords(Phrases phrases, Wording wording) {
    this.phrases = phrases;
    this.wording = wording;
  }

  Findings findings(Weighed weighed, String id) {
    boolean none = weighed.airframes().isEmpty();
    List<Row> rows = rows(weighed);
    int more = weighed.airframes().size() - rows.size();
    return new Findings(
        headline(weighed),
        none ? null : models(weighed.estimate()),
        notes(weighed),
        none ? null : EvidenceDrawing.of(id, weighed, phrases),
        rows,
        more > 0 ? phrases.count("evidence.more", more) : null,
        weighed.narrows(),
        range(weighed, weighed.window()));
  }

  /** How many airframes, and what they say. */
  String headline(Weighed weighed) {
    int count = weighed.airframes().size();
    if (count == 0) {
      return phrases.of("evidence.none");
    }
    String airframes = phrases.count("evidence.airframes", count);
    if (weighed.estimate().candidates().size() == 1) {
      return phrases.of(
          "evidence.one-candidate", airframes, range(weighed, weighed.estimate().candidates()));
    }
    if (weighed.isTransition()) {
      WindowStretches window = weighed.estimate().window().orElseThrow();
      return phrases.of(
          "evidence.transition",
          airframes,
          between(weighed, window.first()),
          between(weighed, window.settled()));
    }
    String where =
        weighed.estimate().credible().stream()
            .map(r -> between(weighed, r))
            .collect(Collectors.joining(phrases.of("evidence.or")));
    return phrases.of("evidence.clean", airframes, where);
  }

  private String between(Weighed weighed, Bounds range) {
    return range.size() == 1
        ? phrases.of("evidence.at", weighed.show(range.first()))
        : phrases.of("evidence.between", weighed.show(range.first()), weighed.show(range.last()));
  }

  private String range(Weighed weighed, Bounds range) {
    return wording.range(weighed.show(range.first()), weighed.show(range.last()));
  }

  private @Nullable String models(Estimate estimate) {
    if (estimate.logBayesFactor().isEmpty()) {
      return null;
    }
    double log = estimate.logBayesFactor().getAsDouble();
    return phrases.of(
        Math.abs(log) < EITHER
            ? "evidence.models.either"
            : log > 0 ? "evidence.models.clean" : "evidence.models.window",
        percent(estimate.cleanChance()),
        percent(estimate.windowChance()),
        factor(Math.exp(Math.abs(log))));
  }

  private String factor(double factor) {
    if (factor > GREATEST_FACTOR) {
      return phrases.of("evidence.factor.great");
    }
    return BigDecimal.valueOf(factor).round(new MathContext(factor < 100 ? 2 : 3)).toPlainString();
  }

  private String percent(double chance) {
    double percent = chance * 100;
    if (percent < 0.5) {
      return phrases.of("evidence.percent.least");
    }
    return percent > 99.5
        ? phrases.of("evidence.percent.most")
        : phrases.of("evidence.percent", String.format(Locale.ROOT, "%.0f", percent));
  }

  private List<String> notes(Weighed weighed) {
    List<String> notes = new ArrayList<>();
    Gathered gathered = weighed.gathered();
    add(notes, "evidence.left-out.both", gathered.leftOut(LeftOut.BOTH));
    add(notes, "evidence.left-out.neither", gathered.leftOut(LeftOut.NEITHER));
    add(notes, "evidence.beyond", EvidenceDrawing.beyond(weighed));
    add(notes, "evidence.suspects", weighed.estimate().suspects().size());
    long hidden = weighed.airframes().stream().filter(a -> !a.agreed()).count();
    if (hidden > 0) {
      notes.add(phrases.count("evidence.hidden", hidden, Bands.SIZE));
    }
    return notes;
  }

  private void add(List<String> notes, String key, int count) {
    if (count > 0) {
      notes.add(phrases.count(key, count));
    }
  }

  /** The airframes by serial; of too many, those nearest to where it cut in. */
  private List<Row> rows(Weighed weighed) {
    Map<String, Double> doubts = new HashMap<>();
    for (Suspect suspect : weighed.estimate().suspects()) {
      doubts.put(suspect.sighting().airframe(), suspect.chance());
    }
    Bounds window = weighed.window();
    return weighed.airframes().stream()
        .sorted(Comparator.comparingLong(a -> distance(a.band(), window)))
        .limit(MOST_ROWS)
        .sorted(Comparator.comparingLong((Stood a) -> a.band().first()).thenComparing(Stood::isNew))
        .map(a -> row(weighed, a, doubts.get(a.airframe())))
        .toList();
  }

  private static long distance(Bounds band, Bounds window) {
    return Math.max(0, Math.max(window.first() - band.last(), band.first() - window.last()));
  }

  private Row row(Weighed weighed, Stood airframe, @Nullable Double doubt) {
    return new Row(
        airframe.named()
            ? weighed.series().show(airframe.serial())
            : phrases.of("evidence.one-of", range(weighed, airframe.band())),
        phrases.of(airframe.isNew() ? "evidence.new" : "evidence.old"),
        airframe.named() ? airframe.on().toString() : "",
        doubt == null ? "" : phrases.of("evidence.doubt", percent(doubt)));
  }
}
