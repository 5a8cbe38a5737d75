package club.yearline.api;

import club.yearline.effectivity.Visibility;
import club.yearline.spotting.NextQuestion;
import club.yearline.spotting.Ranked;
import club.yearline.spotting.Ranking;
import club.yearline.spotting.Seen;
import club.yearline.spotting.Told;
import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonProperty;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is asked and answered about an airframe that somebody looks at. */
final class SpotViews {

  private SpotViews() {}

  /** What was seen, where, and of what family it may be. */
  record SpotQuestion(
      @Schema(description = "Key of the family; all families where it is not given.")
          @Nullable String family,
      @Schema(description = "Where the person stands: it decides what can be asked next.")
          @Coded(Visibility.class)
          @Nullable String visibility,
      @Schema(description = "What was seen, each feature once; at most 200.")
          @Nullable List<ObservationView> observations,
      @Schema(description = "Keys of features that are not to be asked next.")
          @Nullable List<String> skip,
      @Schema(
              description = "How many candidates to list, best first; 1000 where it is not given.",
              minimum = "1",
              maximum = "10000")
          @Nullable Integer limit) {

    static SpotQuestion read(Body body) {
      body.of("family", "visibility", "observations", "skip", "limit");
      SpotQuestion question =
          new SpotQuestion(
              body.text("family"),
              body.text("visibility"),
              Observations.read(body).stream()
                  .map(p -> new ObservationView(p.feature(), p.value()))
                  .toList(),
              body.texts("skip"),
              body.whole("limit"));
      body.refuseFaults();
      return question;
    }

    @JsonIgnore
    List<Told.Pairing> pairings() {
      return observations == null
          ? List.of()
          : observations.stream()
              .map(o -> new Told.Pairing(o.feature(), String.valueOf(o.value())))
              .toList();
    }

    @JsonIgnore
    List<String> skipped() {
      return skip == null ? List.of() : skip;
    }
  }

  /** A value seen on an airframe. */
  record ObservationView(
      @Schema(description = "Key of the feature.") String feature,
      @Schema(
              types = {"string", "number"},
              description = "A value key, or a number in the unit of the feature.")
          Object value) {}

  record Spotted(
      int revision,
      @Schema(description = "Variants and years, the likeliest first.")
          List<CandidateView> candidates,
      @Schema(description = "How many more there are than are listed.") int more,
      @Schema(description = "What to look at next, what tells most first.") List<NextView> next,
      @Schema(
              description =
                  "Figures seen of which no value is recorded for any candidate: they do not count.")
          List<String> leftOut,
      String caution) {

    static Spotted of(
        int revision, Ranking ranking, int limit, List<NextQuestion> next, String caution) {
      List<CandidateView> candidates = ranking.best(limit).stream().map(CandidateView::of).toList();
      return new Spotted(
          revision,
          candidates,
          ranking.size() - candidates.size(),
          next.stream().map(q -> new NextView(q.feature().key(), q.bits())).toList(),
          keys(ranking.leftOut()),
          caution);
    }
  }

  /** A variant and year with its share of all that were considered. */
  record CandidateView(
      String variant,
      int year,
      @Schema(description = "Probability, 0 to 1; all together make 1.") double share,
      @JsonProperty("for")
          @Schema(
              requiredMode = Schema.RequiredMode.REQUIRED,
              description = "Features seen at least twice as likely so here as on the mean.")
          List<String> speaksFor,
      @Schema(description = "Features seen at most half as likely so here as on the mean.")
          List<String> against) {

    static CandidateView of(Ranked ranked) {
      return new CandidateView(
          ranked.pair().variant().key(),
          ranked.pair().year(),
          ranked.share(),
          keys(ranked.speakingFor()),
          keys(ranked.speakingAgainst()));
    }
  }

  /** A feature worth looking at. */
  record NextView(
      String feature,
      @Schema(description = "By how much the uncertainty is expected to drop: bits of entropy.")
          double bits) {}

  private static List<String> keys(List<Seen> seen) {
    return seen.stream().map(s -> s.feature().key()).toList();
  }
}
