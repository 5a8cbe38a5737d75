package club.yearline.api;

import club.yearline.api.SpotViews.ObservationView;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Exchange;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Retrofit;
import club.yearline.inspection.Belongs;
import club.yearline.inspection.CalledFor;
import club.yearline.inspection.Finding;
import club.yearline.inspection.FindingWords;
import club.yearline.inspection.Inspection;
import club.yearline.inspection.Match;
import club.yearline.inspection.Verdict;
import club.yearline.spotting.Share;
import club.yearline.spotting.Told;
import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is asked and answered about an airframe that is said to be of a serial or year. */
final class InspectViews {

  private InspectViews() {}

  /** What an airframe is said to be, and what was seen on it. */
  record InspectQuestion(
      @Schema(description = "Key of the variant claimed.") @Nullable String variant,
      @Schema(description = "Model year or year of manufacture claimed.") @Nullable Integer year,
      @Schema(description = "Serial claimed; enough alone where only one airframe has it.")
          @Nullable String serial,
      @Schema(description = "What was seen, each feature once; at most 200.")
          @Nullable List<ObservationView> observations) {

    static List<Told.Pairing> observations(Body body) {
      return Observations.read(body.of("variant", "year", "serial", "observations"));
    }
  }

  record Inspected(
      int revision,
      @Coded(Verdict.class) String verdict,
      ClaimView claim,
      @Schema(description = "The likeliest variant and year that is not the claimed one.")
          @Nullable OtherView bestOther,
      @Schema(description = "One for each observation, in their order.")
          List<InspectedFinding> findings,
      @Schema(description = "The mandatory retrofits that the claimed position calls for.")
          List<CalledForView> mandatory,
      String caution) {

    static Inspected of(
        int revision, Catalogue catalogue, Inspection made, FindingWords words, String caution) {
      return new Inspected(
          revision,
          made.verdict().code(),
          ClaimView.of(made),
          made.weighed().bestOther().map(OtherView::of).orElse(null),
          made.findings().stream()
              .map(f -> InspectedFinding.of(catalogue, made.claim(), f, words))
              .toList(),
          made.calledFor().stream().map(CalledForView::of).toList(),
          caution);
    }
  }

  record ClaimView(
      String variant,
      @Nullable Integer year,
      @Nullable String serial,
      @Schema(
              description =
                  "Probability among the variants and years of the family, 0 to 1; of all years of"
                      + " the variant together where none is claimed.")
          double share) {

    static ClaimView of(Inspection made) {
      Position claim = made.claim();
      return new ClaimView(
          claim.variant().key(), claim.year(), claim.serialText(), made.weighed().share());
    }
  }

  record OtherView(String variant, int year, double share) {

    static OtherView of(Share share) {
      return new OtherView(share.pair().variant().key(), share.pair().year(), share.share());
    }
  }

  record InspectedFinding(
      String feature,
      String name,
      @Schema(
              types = {"string", "number"},
              description = "A value key, or a number in the unit of the feature.")
          Object observed,
      @Coded(Match.class) String finding,
      @Schema(description = "Where the value is as built. Absent where that is here.")
          @Nullable List<HomeView> asBuiltAt,
      @Schema(
              description =
                  "Where some airframes or some records have the value as built. Absent where that"
                      + " is here.")
          @Nullable List<HomeView> possibleAt,
      @Schema(description = "How readily the part is exchanged.") @Coded(Exchange.class)
          String exchange,
      @Schema(description = "For `retrofit`, the records by which the value may have come.")
          List<RetrofitView> retrofits,
      @Schema(description = "Mandatory retrofits that are called for and were not seen.")
          List<RetrofitView> missing,
      @Schema(description = "What to put to the logbooks; for `differs` and `retrofit`.")
          @Nullable String ask) {

    static InspectedFinding of(
        Catalogue catalogue, Position claim, Finding finding, FindingWords words) {
      boolean expected = finding.match().isExpected();
      String ask = words.ask(finding);
      return new InspectedFinding(
          finding.feature().key(),
          finding.feature().name(),
          observed(finding),
          finding.match().code(),
          expected ? null : finding.asBuiltAt().stream().map(HomeView::of).toList(),
          expected ? null : finding.possibleAt().stream().map(HomeView::of).toList(),
          finding.feature().exchange().code(),
          retrofits(catalogue, claim, finding.retrofits()),
          retrofits(catalogue, claim, finding.missing()),
          ask.isEmpty() ? null : ask);
    }

    private static Object observed(Finding finding) {
      String value = finding.seen().value();
      return finding.feature().isNumber() ? new BigDecimal(value) : value;
    }

    private static List<RetrofitView> retrofits(
        Catalogue catalogue, Position claim, List<Retrofit> retrofits) {
      return retrofits.stream().map(r -> RetrofitView.of(catalogue, r, claim)).toList();
    }
  }

  /** Years of a variant, each of them produced. */
  record HomeView(String variant, int firstYear, int lastYear) {

    static HomeView of(Belongs belongs) {
      return new HomeView(belongs.variant().key(), belongs.firstYear(), belongs.lastYear());
    }
  }

  record CalledForView(
      @Schema(description = "Key of the retrofit.") String retrofit,
      String feature,
      String document,
      @Schema(description = "Whether it was seen. Absent where nobody looked.")
          @Nullable Boolean shown) {

    static CalledForView of(CalledFor called) {
      return new CalledForView(
          called.retrofit().key(),
          called.feature().key(),
          called.retrofit().document(),
          switch (called.shown()) {
            case SHOWN -> true;
            case NOT_SHOWN -> false;
            case NOT_LOOKED_AT -> null;
          });
    }
  }
}
