package club.yearline.compare;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Serial;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.State;
import club.yearline.effectivity.Stretch;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Finds the figures of a variant-year in the answers of the engine. */
final class Builds {

  /** Pounds to a US gallon, where the family records nothing else. */
  private static final BigDecimal AVGAS = new BigDecimal("6.0");

  private final Catalogue catalogue;

  Builds(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** A serial at which some figure's stretch begins. */
  private record Start(Series series, Serial serial) implements Comparable<Start> {

    @Override
    public int compareTo(Start other) {
      return Comparator.comparing((Start s) -> s.series.key())
          .thenComparing(Start::serial)
          .compare(this, other);
    }
  }

  /**
   * The builds of a variant-year: one, or one for each stretch of serials that is alike in all
   * figures.
   *
   * @param family of the variant
   * @param answers by figure, as far as the variant has the features
   */
  List<Build> of(Family family, Map<Figure, Answer> answers) {
    TreeSet<Start> starts = new TreeSet<>();
    for (Answer answer : answers.values()) {
      answer.stretches().forEach(s -> starts.add(new Start(s.series(), s.first())));
    }
    List<Build> builds = new ArrayList<>();
    if (starts.isEmpty()) {
      builds.add(build(family, answers, null));
    }
    starts.forEach(s -> builds.add(build(family, answers, s)));
    return List.copyOf(builds);
  }

  private Build build(Family family, Map<Figure, Answer> answers, @Nullable Start start) {
    Map<Figure, Recorded> figures = new EnumMap<>(Figure.class);
    Serial last = null;
    for (Figure figure : Figure.ALL) {
      Answer answer = answers.get(figure);
      if (answer != null && answer.state() == State.SPLITS && start != null) {
        Optional<Stretch> stretch = stretch(answer, start);
        answer = stretch.map(Stretch::answer).orElse(null);
        last = stretch.isPresent() ? earlier(last, stretch.get().last()) : last;
      }
      figures.put(figure, answer == null ? absent(figure) : Recorded.of(figure, answer));
    }
    return new Build(serials(start, last), figures, density(family));
  }

  private static Serial earlier(@Nullable Serial known, Serial one) {
    return known == null || one.compareTo(known) < 0 ? one : known;
  }

  private static Build.@Nullable Serials serials(@Nullable Start start, @Nullable Serial last) {
    return start == null || last == null
        ? null
        : new Build.Serials(start.series.show(start.serial), start.series.show(last));
  }

  private static Optional<Stretch> stretch(Answer answer, Start start) {
    return answer.stretches().stream()
        .filter(s -> s.series().key().equals(start.series.key()))
        .filter(s -> s.first().compareTo(start.serial) <= 0)
        .reduce((earlier, later) -> later);
  }

  private Recorded absent(Figure figure) {
    return Recorded.missing(
        figure,
        catalogue.feature(figure.key()).isPresent() ? Missing.NOT_OF_VARIANT : Missing.NO_FEATURE);
  }

  private static Amount density(Family family) {
    BigDecimal recorded = family.fuelDensity();
    return Amount.recorded(recorded == null ? AVGAS : recorded, Scale.LB_GAL);
  }
}
