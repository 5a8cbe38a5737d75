package club.yearline.inspection;

import club.yearline.effectivity.Position;
import club.yearline.effectivity.Variant;
import club.yearline.expected.Plate;
import club.yearline.spotting.Pair;
import club.yearline.spotting.Share;
import club.yearline.spotting.Weighed;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Puts inspections into words and addresses, for one reading and request. */
final class Reports {

  private static final double PERCENT = 100;

  private final Addresses addresses;
  private final Plate plate;
  private final FindingWords words;
  private final Phrases phrases;

  Reports(Addresses addresses, Plate plate, FindingWords words, Phrases phrases) {
    this.addresses = addresses;
    this.plate = plate;
    this.words = words;
    this.phrases = phrases;
  }

  Report of(Inspection made) {
    String key = "inspect.verdict." + made.verdict().code();
    return new Report(
        plate.heading(made.claim()),
        plate.names(made.claim()),
        made.verdict().code(),
        phrases.of(key),
        phrases.of(key + ".text"),
        tallies(made),
        other(made),
        lines(made),
        made.calledFor().stream().map(this::called).toList(),
        made.findings().stream().map(words::ask).filter(q -> !q.isEmpty()).toList());
  }

  private List<Report.Tally> tallies(Inspection made) {
    List<Report.Tally> tallies = new ArrayList<>();
    for (Match match : Match.values()) {
      long count = made.findings().stream().filter(f -> f.match() == match).count();
      if (count > 0) {
        tallies.add(
            new Report.Tally(mark(match), phrases.of("inspect.tally." + match.code(), count)));
      }
    }
    return tallies;
  }

  /** Those to be explained first, then by chapter and name. */
  private List<Report.Line> lines(Inspection made) {
    return made.findings().stream()
        .sorted(
            Comparator.comparing(Finding::match, Comparator.reverseOrder())
                .thenComparing(f -> f.feature().chapter())
                .thenComparing(f -> f.feature().name()))
        .map(this::line)
        .toList();
  }

  private Report.Line line(Finding finding) {
    return new Report.Line(
        "#" + Walks.id(finding.feature()),
        finding.feature().chapter(),
        finding.feature().name(),
        words.observed(finding),
        mark(finding.match()),
        words.word(finding.match()),
        words.says(finding),
        isPlain(finding),
        words.notes(finding));
  }

  private static boolean isPlain(Finding finding) {
    return finding.match().isExpected()
        && finding.match() != Match.EITHER
        && finding.missing().isEmpty();
  }

  Walk.Found found(Finding finding) {
    return new Walk.Found(mark(finding.match()), words.word(finding.match()), words.says(finding));
  }

  private Report.Called called(CalledFor called) {
    return new Report.Called(
        words.calledFor(called),
        switch (called.shown()) {
          case SHOWN -> "mark is-settled";
          case NOT_SHOWN -> "mark is-disputed";
          case NOT_LOOKED_AT -> "mark is-unrecorded";
        },
        phrases.of("inspect.called." + called.shown().name().toLowerCase(Locale.ROOT)));
  }

  /** Another variant and year is named where it explains what was seen better than the claim. */
  private Report.@Nullable Other other(Inspection made) {
    Weighed weighed = made.weighed();
    return weighed
        .bestOther()
        .filter(o -> o.share() > weighed.share())
        .filter(o -> made.verdict() != Verdict.TOO_LITTLE)
        .map(o -> other(made.claim(), weighed.share(), o))
        .orElse(null);
  }

  private Report.Other other(Position claim, double share, Share best) {
    Pair pair = best.pair();
    Variant variant = pair.variant();
    return new Report.Other(
        phrases.of(
            "inspect.other",
            variant.designation(),
            pair.year(),
            percent(best.share()),
            percent(share)),
        addresses.to(variant.key(), pair.year(), null),
        claim.year() == null
            ? null
            : addresses.links().differences(claim, Position.of(variant, pair.year())));
  }

  private String percent(double share) {
    return share < 1 / PERCENT
        ? phrases.of("inspect.percent.less")
        : phrases.of("inspect.percent", Math.round(share * PERCENT));
  }

  private static String mark(Match match) {
    return switch (match) {
      case AS_BUILT -> "mark is-settled";
      case AS_BUILT_OPTION -> "mark is-option";
      case EITHER -> "mark is-transition";
      case RETROFIT -> "mark is-retrofit";
      case NOT_RECORDED -> "mark is-unrecorded";
      case DIFFERS -> "mark is-disputed";
    };
  }
}
