package club.yearline.quiz;

import club.yearline.catalog.Links;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Picture;
import club.yearline.effectivity.Values;
import club.yearline.quiz.QuizView.Line;
import club.yearline.quiz.QuizView.Option;
import club.yearline.quiz.QuizView.Shot;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Makes what the pages of a quiz show. */
@Component
class QuizViews {

  private final QuizWords words;
  private final Solutions solutions;
  private final Phrases phrases;

  QuizViews(QuizWords words, Solutions solutions, Phrases phrases) {
    this.words = words;
    this.solutions = solutions;
    this.phrases = phrases;
  }

  /**
   * How a quiz is shown.
   *
   * @param links addresses of the catalogue; null where the reader may not go there
   * @param pictures addresses of pictures
   * @param answers the answers by number of question; null before they are in
   */
  record Showing(
      Catalogue catalogue,
      int revision,
      @Nullable Links links,
      Function<Picture, String> pictures,
      @Nullable Map<Integer, String> answers) {}

  QuizView view(Quiz quiz, Selection selection, Showing showing) {
    List<Line> lines = new ArrayList<>();
    for (QuizQuestion question : quiz.questions()) {
      lines.add(line(lines.size() + 1, question, showing));
    }
    String family = showing.catalogue().family(selection.family()).orElseThrow().name();
    return new QuizView(
        phrases.count("quiz.of", lines.size(), family),
        selection.number(),
        showing.revision(),
        lines,
        showing.answers() != null,
        (int) lines.stream().filter(l -> l.outcome().equals("right")).count());
  }

  private Line line(int number, QuizQuestion question, Showing showing) {
    String given = showing.answers() == null ? "" : showing.answers().getOrDefault(number, "");
    List<Option> options = new ArrayList<>();
    for (Claim claim : question.options()) {
      int place = options.size();
      String letter = Character.toString((char) ('a' + place));
      options.add(
          new Option(
              letter,
              words.option(question.kind(), claim),
              optionPicture(question, claim, showing),
              letter.equals(given),
              place == question.right()));
    }
    Option right = options.get(question.right());
    boolean told = showing.answers() != null;
    boolean answered = options.stream().anyMatch(Option::chosen);
    return new Line(
        number,
        words.kind(question.kind()),
        words.question(question),
        questionPicture(question, showing),
        options,
        answered ? right.chosen() ? "right" : "wrong" : "open",
        phrases.of("quiz.solution", right.letter(), right.text()),
        told ? solutions.proofs(question, showing) : List.of(),
        told ? solutions.sources(question, showing) : List.of());
  }

  private static @Nullable Shot questionPicture(QuizQuestion question, Showing showing) {
    Claim claim = question.options().get(0);
    if (claim instanceof Claim.Has c) {
      return shot(c.feature(), c.value(), showing);
    }
    return question.kind() == Kind.TRUE_OR_DOUBTFUL && claim instanceof Claim.Settles c
        ? shot(c.feature(), c.value(), showing)
        : null;
  }

  private static @Nullable Shot optionPicture(QuizQuestion question, Claim claim, Showing showing) {
    return question.kind() == Kind.SERIAL && claim instanceof Claim.Settles c
        ? shot(c.feature(), c.value(), showing)
        : null;
  }

  private static @Nullable Shot shot(Feature feature, String value, Showing showing) {
    return picture(feature, value, showing.catalogue())
        .map(p -> new Shot(showing.pictures().apply(p), p.mediaType().equals("image/svg+xml")))
        .orElse(null);
  }

  private static Optional<Picture> picture(Feature feature, String value, Catalogue catalogue) {
    return feature.values().stream()
        .filter(v -> Values.canonical(v.key()).equals(value))
        .map(FeatureValue::picture)
        .filter(name -> name != null)
        .findFirst()
        .flatMap(catalogue::picture);
  }
}
