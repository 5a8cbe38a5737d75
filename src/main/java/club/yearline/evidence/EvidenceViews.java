package club.yearline.evidence;

import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.Variant;
import club.yearline.estimation.CutInQuestion;
import club.yearline.evidence.EvidencePage.Plot;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Makes what an evidence page shows. */
@Component
class EvidenceViews {

  private final Weighing weighing;
  private final EvidenceWords words;
  private final Wording wording;
  private final Phrases phrases;

  EvidenceViews(Weighing weighing, EvidenceWords words, Wording wording, Phrases phrases) {
    this.weighing = weighing;
    this.words = words;
    this.wording = wording;
    this.phrases = phrases;
  }

  /** What a reader types into the form of one plot. */
  record Typed(
      @Nullable String variant, @Nullable String series, @Nullable String lo, @Nullable String hi) {

    boolean isAbout(CutInQuestion question) {
      return question.cutIn().variant().equals(variant)
          && (series == null || question.series().key().equals(series));
    }
  }

  /**
   * The page.
   *
   * @param named whether airframes are named whose owners agreed
   */
  EvidencePage page(Change change, Typed typed, Links links, boolean named) {
    Catalogue catalogue = links.reading().catalogue();
    List<CutInQuestion> questions = Weighing.questions(catalogue, change);
    List<Plot> plots = new ArrayList<>();
    for (CutInQuestion question : questions) {
      long ofVariant = questions.stream().filter(q -> q.cutIn().equals(question.cutIn())).count();
      plots.add(
          plot(catalogue, change, question, typed, "plot-" + plots.size(), ofVariant > 1, named));
    }
    return new EvidencePage(change.title(), change.key(), links.change(change.key()), plots);
  }

  private Plot plot(
      Catalogue catalogue,
      Change change,
      CutInQuestion question,
      Typed typed,
      String id,
      boolean several,
      boolean named) {
    Variant variant = catalogue.variant(question.cutIn().variant()).orElseThrow();
    boolean asked = typed.isAbout(question);
    Asked bounds = Asked.of(question, asked ? typed.lo() : null, asked ? typed.hi() : null);
    Map<String, String> faults = new LinkedHashMap<>();
    bounds
        .faults()
        .forEach((field, key) -> faults.put(field, phrases.of(key, question.series().key())));
    return new Plot(
        id,
        variant.key(),
        several
            ? phrases.of("evidence.of-series", variant.designation(), question.series().key())
            : variant.designation(),
        question.series().key(),
        wording.cutIn(question.cutIn()),
        bounds.lo(),
        bounds.hi(),
        bounds.own(),
        faults,
        bounds.bounds() == null
            ? null
            : words.findings(
                weighing.weigh(catalogue, change, question, bounds.bounds(), named), id));
  }
}
