package club.yearline.quiz;

import club.yearline.catalog.Wording;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Position;
import club.yearline.web.Phrases;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** Says questions and options in words. */
@Component
class QuizWords {

  private final Wording wording;
  private final Phrases phrases;

  QuizWords(Wording wording, Phrases phrases) {
    this.wording = wording;
    this.phrases = phrases;
  }

  String kind(Kind kind) {
    return phrases.of("quiz.kind." + kind.code());
  }

  /** What a question asks; the options share what is asked about. */
  String question(QuizQuestion question) {
    Claim claim = question.options().get(0);
    String key = "quiz.ask." + question.kind().code();
    if (claim instanceof Claim.Has c) {
      return phrases.of(key, c.feature().name(), value(c.feature(), c.value()));
    }
    if (claim instanceof Claim.Became c) {
      return phrases.of(
          key, c.before().variant().designation(), c.before().year(), c.after().year());
    }
    if (claim instanceof Claim.InOrder c) {
      return phrases.of(key, c.arrivals().get(0).year().variant().designation());
    }
    if (claim instanceof Claim.Odd c) {
      return phrases.of(key, c.feature().name());
    }
    Claim.Settles c = (Claim.Settles) claim;
    return question.kind() == Kind.SERIAL
        ? phrases.of(key, serial(c.at()), c.feature().name())
        : phrases.of(key, Labels.place(c.at()), c.feature().name(), value(c.feature(), c.value()));
  }

  private static String serial(Position at) {
    String year = at.year() == null ? "" : " " + at.year();
    return at.serialText() + ", " + at.variant().designation() + year;
  }

  /** What an option says. */
  String option(Kind kind, Claim claim) {
    String key = "quiz.option." + kind.code();
    if (claim instanceof Claim.Has c) {
      return Labels.place(c.at());
    }
    if (claim instanceof Claim.Odd c) {
      return Labels.place(c.place());
    }
    if (claim instanceof Claim.Became c) {
      return phrases.of(
          key, c.feature().name(), value(c.feature(), c.from()), value(c.feature(), c.to()));
    }
    if (claim instanceof Claim.InOrder c) {
      return c.arrivals().stream().map(this::thing).collect(Collectors.joining(" → "));
    }
    if (claim instanceof Claim.Settles c) {
      return kind == Kind.SERIAL ? value(c.feature(), c.value()) : phrases.of(key + ".true");
    }
    return phrases.of(key + (claim instanceof Claim.Mixes ? ".mixed" : ".false"));
  }

  private String thing(Claim.Arrival arrival) {
    Feature feature = arrival.feature();
    return phrases.of("quiz.thing", feature.name(), value(feature, arrival.value()));
  }

  private String value(Feature feature, String value) {
    return feature.isNumber() ? wording.value(feature, value) : Labels.value(feature, value);
  }
}
