package club.yearline.spotting;

import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Picture;
import club.yearline.effectivity.Visibility;
import club.yearline.web.Phrases;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Lays out the question, and what to do where none is left. */
final class QuestionViews {

  /** A question that is expected to tell less is not worth a walk around the airframe. */
  private static final double WORTH = 0.01;

  /** More recorded numbers than these are typed, not tapped. */
  private static final int MOST_NUMBERS = 8;

  private final Links links;
  private final Wording wording;
  private final Phrases phrases;
  private final SpotAddress address;
  private final Considered considered;
  private final Ranking ranking;
  private final Set<String> skipped;

  QuestionViews(
      Links links,
      Wording wording,
      Phrases phrases,
      SpotAddress address,
      Considered considered,
      Ranking ranking) {
    this.links = links;
    this.wording = wording;
    this.phrases = phrases;
    this.address = address;
    this.considered = considered;
    this.ranking = ranking;
    this.skipped = address.skipped().stream().map(Feature::key).collect(Collectors.toSet());
  }

  /** The question asked for or, where none is, the one that tells most. */
  Optional<SpotView.Asking> asking(@Nullable String typed) {
    List<NextQuestion> next = worth(address.standing());
    Feature asked = address.asked();
    if (asked == null) {
      return next.stream().findFirst().map(q -> asking(q.feature(), q.bits(), null));
    }
    double bits =
        ranking.next(Visibility.PAPERS, Set.of()).stream()
            .filter(q -> q.feature().key().equals(asked.key()))
            .mapToDouble(NextQuestion::bits)
            .findFirst()
            .orElse(0);
    return Optional.of(asking(asked, bits, typed));
  }

  private List<NextQuestion> worth(Visibility standing) {
    return ranking.next(standing, skipped).stream().filter(q -> q.bits() >= WORTH).toList();
  }

  private SpotView.Asking asking(Feature feature, double bits, @Nullable String typed) {
    List<SpotView.Tile> tiles = tiles(feature);
    String unit = feature.unit();
    return new SpotView.Asking(
        feature.name(),
        feature.key(),
        feature.description(),
        phrases.of("spot.seen-from." + feature.visibility().code()),
        bits < WORTH ? null : phrases.of("spot.bits", String.format(Locale.ROOT, "%.2f", bits)),
        tiles,
        feature.isNumber(),
        unit == null || unit.equals("count") ? null : unit,
        typed,
        address.forgetting(feature).parts(),
        links.at(address.skipping(feature).path()),
        tiles.stream().anyMatch(t -> t.picture() != null));
  }

  private List<SpotView.Tile> tiles(Feature feature) {
    if (feature.isNumber()) {
      List<String> numbers = considered.values(feature);
      return numbers.size() > MOST_NUMBERS
          ? List.of()
          : numbers.stream().map(n -> tile(feature, n, null)).toList();
    }
    return feature.values().stream().map(v -> tile(feature, v.key(), v)).toList();
  }

  private SpotView.Tile tile(Feature feature, String value, @Nullable FeatureValue drawn) {
    Seen seen = new Seen(feature, value);
    Optional<Picture> picture =
        Optional.ofNullable(drawn)
            .map(FeatureValue::picture)
            .flatMap(links.reading().catalogue()::picture);
    return new SpotView.Tile(
        wording.value(feature, value),
        drawn == null ? null : drawn.cue(),
        picture.map(links::picture).orElse(null),
        picture.map(p -> p.mediaType().equals("image/svg+xml")).orElse(false),
        address.seen().contains(seen),
        links.at(address.seeing(seen).path()));
  }

  /** The places, each as a link to the same page seen from there. */
  List<SpotView.Place> places(List<Visibility> places) {
    return places.stream()
        .map(
            p ->
                new SpotView.Place(
                    phrases.of("spot.place." + p.code()),
                    links.at(address.standingAt(p).asking(null).path()),
                    p == address.standing()))
        .toList();
  }

  SpotView.Onward onward() {
    List<Visibility> telling =
        Stream.of(Visibility.values())
            .filter(p -> p.compareTo(address.standing()) > 0)
            .filter(this::tellsMore)
            .toList();
    String key = ranking.size() == 0 ? "nothing" : telling.isEmpty() ? "everywhere" : "from-here";
    return new SpotView.Onward(phrases.of("spot.onward." + key), places(telling));
  }

  /** Whether a place shows something worth asking that cannot be seen from the one before it. */
  private boolean tellsMore(Visibility place) {
    return worth(place).stream().anyMatch(q -> q.feature().visibility() == place);
  }
}
