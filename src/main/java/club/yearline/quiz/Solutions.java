package club.yearline.quiz;

import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.citation.Citation;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Possible;
import club.yearline.effectivity.SourceEntry;
import club.yearline.effectivity.State;
import club.yearline.quiz.QuizView.Proof;
import club.yearline.quiz.QuizViews.Showing;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Why the right option is right: the engine's answers, the changes behind them, the sources. */
@Component
class Solutions {

  private final Wording wording;
  private final Phrases phrases;

  Solutions(Wording wording, Phrases phrases) {
    this.wording = wording;
    this.phrases = phrases;
  }

  /** The engine's answers, and the changes that decide them. */
  List<Proof> proofs(QuizQuestion question, Showing showing) {
    List<Proof> proofs = new ArrayList<>();
    for (Ask ask : asks(question)) {
      Links links = showing.links();
      String href = links == null ? null : links.expected(ask.at());
      proofs.add(new Proof(answer(ask, showing.catalogue()), href));
    }
    asks(question).stream()
        .flatMap(a -> deciding(answered(a, showing.catalogue())))
        .map(p -> change(p, showing.links()))
        .distinct()
        .forEach(proofs::add);
    return proofs;
  }

  /** The sources of those answers, those for them and those against. */
  List<Proof> sources(QuizQuestion question, Showing showing) {
    return asks(question).stream()
        .flatMap(a -> answered(a, showing.catalogue()).evidence().citations().stream())
        .map(c -> source(c, showing))
        .distinct()
        .toList();
  }

  /** Options that are one position each are all told, so that one sees where the others stand. */
  private static List<Ask> asks(QuizQuestion question) {
    return question.kind() == Kind.WHICH_YEAR
        ? question.options().stream().flatMap(c -> c.asks().stream()).toList()
        : question.answer().asks();
  }

  private String answer(Ask ask, Catalogue catalogue) {
    Answer answer = answered(ask, catalogue);
    String words = wording.answer(answer);
    return phrases.of(
        answer.state() == State.TRANSITION ? "quiz.proof.transition" : "quiz.proof",
        Labels.place(ask.at()),
        ask.feature().name(),
        words);
  }

  private static Answer answered(Ask ask, Catalogue catalogue) {
    return catalogue
        .model(ask.at().variant().key())
        .flatMap(m -> m.timeline(ask.feature().key()))
        .orElseThrow()
        .at(ask.at());
  }

  private static Stream<Possible> deciding(Answer answer) {
    return answer.state() == State.SPLITS
        ? answer.stretches().stream().flatMap(s -> deciding(s.answer()))
        : answer.possible().stream().filter(p -> !p.isNothing());
  }

  private Proof change(Possible possible, @Nullable Links links) {
    var change = Objects.requireNonNull(possible.change());
    String where =
        possible.cutIn() == null ? "" : wording.cutIn(Objects.requireNonNull(possible.cutIn()));
    return new Proof(
        phrases.of("quiz.change", change.title(), where),
        links == null ? null : links.change(change.key()));
  }

  private Proof source(Citation citation, Showing showing) {
    String title =
        showing
            .catalogue()
            .source(citation.source())
            .map(SourceEntry::source)
            .map(s -> s.title())
            .orElse(citation.source());
    String text =
        citation.locator() == null ? title : phrases.of("quiz.source", title, citation.locator());
    Links links = showing.links();
    return new Proof(
        citation.supports() ? text : phrases.of("quiz.source.against", text),
        links == null ? null : links.source(citation.source()));
  }
}
