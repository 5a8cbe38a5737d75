package club.yearline.spotting;

import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Position;
import club.yearline.web.Phrases;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.web.util.UriUtils;

/** Lays out the ranking. */
final class RankingViews {

  private static final int SHOWN = 5;
  private static final int MORE = 40;

  /** Less than this share is not worth a line of its own among the first. */
  private static final double NEGLIGIBLE = 0.005;

  /** Nothing is ever ruled out, so a share beside others is not shown as the whole, in percent. */
  private static final double CERTAIN = 99.5;

  private final Links links;
  private final Wording wording;
  private final Phrases phrases;
  private final SpotAddress address;
  private final Ranking ranking;
  private final Spans all;
  private final List<RankedSpan> spans;
  private final int first;

  RankingViews(
      Links links, Wording wording, Phrases phrases, SpotAddress address, Ranking ranking) {
    this.links = links;
    this.wording = wording;
    this.phrases = phrases;
    this.address = address;
    this.ranking = ranking;
    this.all = ranking.spans();
    this.spans = all.best(SHOWN + MORE);
    long telling = spans.stream().filter(s -> s.share() >= NEGLIGIBLE).count();
    this.first = (int) Math.min(SHOWN, Math.max(Math.min(1, spans.size()), telling));
  }

  /** The likeliest, in words; null where nothing is ranked or nothing was seen. */
  @Nullable String soFar() {
    if (spans.isEmpty() || ranking.seen().isEmpty()) {
      return null;
    }
    RankedSpan best = spans.get(0);
    return phrases.of(
        "spot.so-far", best.variant().designation(), years(best), percent(best.share()));
  }

  /** As many equally likely years would leave as much in question. */
  String open() {
    return phrases.count("spot.open", Math.round(Math.pow(2, ranking.bits())));
  }

  List<SpotView.Span> shown() {
    return spans.stream().limit(first).map(this::span).toList();
  }

  List<SpotView.Span> more() {
    return spans.stream().skip(first).map(this::span).toList();
  }

  @Nullable String rest() {
    int left = all.size() - spans.size();
    double share = 1 - spans.stream().mapToDouble(RankedSpan::share).sum();
    return left == 0 ? null : phrases.of("spot.rest", left, percent(share));
  }

  /** That no airframe left the factory with all of this; null where one may have. */
  @Nullable String misfit() {
    if (!all.nothingFits()) {
      return null;
    }
    RankedSpan best = spans.get(0);
    return phrases.of(
        "spot.misfit", best.variant().designation(), years(best), named(best.exchanged()));
  }

  private SpotView.Span span(RankedSpan span) {
    return new SpotView.Span(
        span.variant().designation(),
        links.variant(span.variant().key()),
        years(span),
        percent(span.share()),
        String.format(Locale.ROOT, "%.1f", 100 * span.share()),
        span.speakingFor().isEmpty() ? null : named(span.speakingFor()),
        span.speakingAgainst().isEmpty() ? null : named(span.speakingAgainst()),
        span.years().stream().map(this::year).toList());
  }

  private SpotView.Year year(Share share) {
    Pair pair = share.pair();
    String inspected =
        "/inspect?variant="
            + UriUtils.encode(pair.variant().key(), StandardCharsets.UTF_8)
            + "&year="
            + pair.year();
    return new SpotView.Year(
        "" + pair.year(),
        percent(share.share()),
        address.carriedTo(links.expected(Position.of(pair.variant(), pair.year()))),
        links.at(address.carriedTo(inspected)));
  }

  private String years(RankedSpan span) {
    return wording.years(span.firstYear(), span.lastYear());
  }

  private String named(List<Seen> seen) {
    return seen.stream()
        .map(
            s ->
                phrases.of("spot.named", s.feature().name(), wording.value(s.feature(), s.value())))
        .collect(Collectors.joining(phrases.of("spot.named.and")));
  }

  private String percent(double share) {
    double percent = 100 * share;
    if (percent < 0.1) {
      return phrases.of("spot.percent.under");
    }
    if (percent >= CERTAIN && spans.size() > 1) {
      return phrases.of("spot.percent.over");
    }
    String digits = percent < 9.95 ? "%.1f" : "%.0f";
    return phrases.of("spot.percent", String.format(Locale.ROOT, digits, percent));
  }
}
