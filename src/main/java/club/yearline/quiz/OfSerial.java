package club.yearline.quiz;

import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Question;
import club.yearline.effectivity.Serial;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.Timeline;
import club.yearline.effectivity.VariantModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What one serial left the factory with; a transition is an answer too, where there is one. */
final class OfSerial implements Maker {

  private static final int WRONG = 3;

  private final Ground ground;
  private final Draws draws;

  OfSerial(Ground ground, Draws draws) {
    this.ground = ground;
    this.draws = draws;
  }

  @Override
  public List<Subject> subjects() {
    List<Subject> settled = new ArrayList<>();
    List<Subject> mixed = new ArrayList<>();
    for (VariantModel model : ground.models()) {
      List<Timeline> timelines = ground.timelines(model);
      for (SerialBlock block : model.blocks()) {
        for (Timeline timeline : timelines) {
          Feature feature = timeline.feature();
          Subject subject = new Subject(feature.key(), () -> question(block, model, feature));
          (mixes(block, model, feature) ? mixed : settled).add(subject);
        }
      }
    }
    return Maker.mingled(draws.shuffled(settled), draws.shuffled(mixed));
  }

  private boolean mixes(SerialBlock block, VariantModel model, Feature feature) {
    Integer year = block.year();
    return year != null
        && ground.judge().fact(Position.of(model.variant(), year), feature).isTransition();
  }

  /** Whether a transition is a plausible answer: the variant has one of the feature. */
  private boolean mixes(VariantModel model, Feature feature) {
    return ground.years(model).stream()
        .anyMatch(y -> ground.judge().fact(y, feature).isTransition());
  }

  private Optional<QuizQuestion> question(SerialBlock block, VariantModel model, Feature feature) {
    return drawn(block).flatMap(at -> question(at, feature, mixes(model, feature)));
  }

  private Optional<QuizQuestion> question(Position at, Feature feature, boolean mixes) {
    Fact fact = ground.judge().fact(at, feature);
    List<Claim> claims =
        ground.values(feature).stream().<Claim>map(v -> new Claim.Settles(at, feature, v)).toList();
    List<Claim> options = new ArrayList<>(draws.some(judged(claims, Verdict.FAILS), WRONG));
    options.addAll(judged(claims, Verdict.HOLDS));
    List<Claim> shown = draws.shuffled(options);
    if (mixes || fact.isTransition()) {
      shown.add(new Claim.Mixes(at, feature));
    }
    return QuizQuestion.of(Kind.SERIAL, shown, ground.judge());
  }

  private List<Claim> judged(List<Claim> claims, Verdict verdict) {
    return claims.stream().filter(c -> ground.judge().verdict(c) == verdict).toList();
  }

  /** A serial of the block, if it reads as one position and no other. */
  private Optional<Position> drawn(SerialBlock block) {
    Series series = ground.catalogue().series(block.series()).orElseThrow();
    Optional<Serial> first = series.read(block.firstSerial());
    Optional<Serial> last = block.lastSerial() == null ? first : series.read(block.lastSerial());
    if (first.isEmpty() || last.isEmpty()) {
      return Optional.empty();
    }
    long from = first.get().ordinal();
    long ordinal = from + draws.below(last.get().ordinal() - from + 1);
    Question question = new Question(null, null, series.show(Serial.of(ordinal)));
    return ground.catalogue().locate(question) instanceof Located.Found found
            && found.position().variant().key().equals(block.variant())
        ? Optional.of(found.position())
        : Optional.empty();
  }
}
