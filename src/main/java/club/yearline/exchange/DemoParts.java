package club.yearline.exchange;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Possible;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.Serial;
import club.yearline.effectivity.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * What an invented airframe left the factory with, and what is on it now: parts get exchanged as
 * often as their class says, and retrofits are installed.
 */
final class DemoParts {

  private static final double OPTION_TAKEN = 0.25;
  private static final double RETROFITTED = 0.3;
  private static final double MUST_BE_RETROFITTED = 0.85;

  /** Few, where a true cut-in is stated: a kit that everybody has tells nothing of it. */
  private static final double RETROFITTED_IF_TOLD = 0.05;

  private final Catalogue catalogue;
  private final List<TrueCutIn> truths;
  private final SplittableRandom random;

  DemoParts(Catalogue catalogue, List<TrueCutIn> truths, SplittableRandom random) {
    this.catalogue = catalogue;
    this.truths = truths;
    this.random = random;
  }

  /**
   * A part: as it was made, and as it is now.
   *
   * @param told whether a true cut-in of its feature is stated for the variant
   * @param stated whether it is stated that this airframe's part was exchanged
   */
  record Part(Feature feature, String made, String now, boolean told, boolean stated) {

    boolean wasExchanged() {
      return !made.equals(now);
    }
  }

  /** The parts of an airframe that can be told apart by looking, by the key of their feature. */
  Map<String, Part> of(Position position) {
    Map<String, Part> parts = new TreeMap<>();
    for (Answer answer : catalogue.expected(position)) {
      Feature feature = answer.feature();
      Optional<TrueCutIn> truth = truth(answer, position);
      Optional<String> made =
          truth
              .map(t -> t.made(serial(position), random.nextBoolean()))
              .or(() -> feature.isNumber() ? Optional.empty() : made(answer));
      made.ifPresent(m -> parts.put(feature.key(), part(answer, position, m, truth)));
    }
    return parts;
  }

  private Part part(Answer answer, Position position, String made, Optional<TrueCutIn> truth) {
    Feature feature = answer.feature();
    if (truth.isPresent() && truth.get().exchanged().contains(serial(position))) {
      return new Part(feature, made, truth.get().other(made), true, true);
    }
    String now = now(answer, position, made, truth.isPresent());
    return new Part(feature, made, now, truth.isPresent(), false);
  }

  private String now(Answer answer, Position position, String made, boolean told) {
    Feature feature = answer.feature();
    for (Retrofit retrofit : answer.retrofits()) {
      if (retrofit.fits(position) && random.nextDouble() < installed(retrofit, told)) {
        return retrofit.value();
      }
    }
    if (random.nextDouble() < feature.exchange().chance()) {
      return feature.values().get(random.nextInt(feature.values().size())).key();
    }
    return made;
  }

  private double installed(Retrofit retrofit, boolean told) {
    if (told) {
      return RETROFITTED_IF_TOLD;
    }
    return catalogue.isMandatory(retrofit) ? MUST_BE_RETROFITTED : RETROFITTED;
  }

  private Optional<TrueCutIn> truth(Answer answer, Position position) {
    return truths.stream()
        .filter(t -> t.feature().key().equals(answer.feature().key()))
        .filter(t -> t.variant().equals(position.variant().key()))
        .filter(t -> answersFor(t, answer))
        .findFirst();
  }

  /** An earlier or later change of the same feature is not the truth's business. */
  private static boolean answersFor(TrueCutIn truth, Answer answer) {
    return answer.possible().stream()
        .flatMap(p -> p.offering().stream())
        .map(Offered::value)
        .anyMatch(v -> v.equals(truth.old()) || v.equals(truth.fresh()));
  }

  private static Serial serial(Position position) {
    Serial serial = position.serial();
    if (serial == null) {
      throw new IllegalArgumentException("Every airframe of the demo has a serial");
    }
    return serial;
  }

  private Optional<String> made(Answer answer) {
    if (answer.state() == State.UNRECORDED || answer.possible().isEmpty()) {
      return Optional.empty();
    }
    Possible possible = answer.possible().get(random.nextInt(answer.possible().size()));
    return possible.isNothing() ? Optional.empty() : Optional.of(taken(possible.offering()));
  }

  private String taken(List<Offered> offering) {
    List<String> standard = new ArrayList<>();
    for (Offered offered : offering) {
      double rate = offered.takeRate() == null ? OPTION_TAKEN : offered.takeRate().doubleValue();
      if (offered.fit() == Fit.STANDARD) {
        standard.add(offered.value());
      } else if (random.nextDouble() < rate) {
        return offered.value();
      }
    }
    return standard.isEmpty()
        ? offering.get(0).value()
        : standard.get(random.nextInt(standard.size()));
  }
}
