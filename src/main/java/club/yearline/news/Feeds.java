package club.yearline.news;

import club.yearline.catalog.Revision;
import club.yearline.catalog.Snapshots;
import club.yearline.effectivity.Family;
import club.yearline.web.Phrases;
import club.yearline.web.Refusal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.web.util.UriUtils;

/** Gathers what documents of the feeds hold. */
@Component
class Feeds {

  /** How many revisions one document holds. */
  static final int ENTRIES = 25;

  private final Snapshots snapshots;
  private final Tallies tallies;
  private final FeedName names;
  private final Phrases phrases;

  Feeds(Snapshots snapshots, Tallies tallies, FeedName names, Phrases phrases) {
    this.snapshots = snapshots;
    this.tallies = tallies;
    this.names = names;
    this.phrases = phrases;
  }

  /** Every revision below a number; from the newest on where there is none. */
  FeedPart whole(String address, @Nullable Integer below) {
    int top = Math.min(top(below), snapshots.head().number() + 1);
    List<Integer> numbers =
        IntStream.iterate(top - 1, n -> n >= 1 && n >= top - ENTRIES - 1, n -> n - 1)
            .boxed()
            .toList();
    return part(
        names.whole(), phrases.of("news.feed"), address, "/feed", "/revisions", below, numbers);
  }

  /** The revisions below a number that touched a family. */
  FeedPart family(String key, String address, @Nullable Integer below) {
    List<Integer> numbers = tallies.touching(key, top(below), ENTRIES + 1);
    String name = snapshots.head().catalogue().family(key).map(Family::name).orElse(null);
    if (name == null && below == null && numbers.isEmpty()) {
      throw Refusal.notFound("unknown-family", key);
    }
    String segment = UriUtils.encodePathSegment(key, StandardCharsets.UTF_8);
    return part(
        names.family(key),
        phrases.of("news.feed.family", name == null ? key : name),
        address,
        FeedLink.familyPath(key),
        "/families/" + segment,
        below,
        numbers);
  }

  private static int top(@Nullable Integer below) {
    return below == null ? Integer.MAX_VALUE : below;
  }

  /** A number more than a document holds says that there is another one. */
  private FeedPart part(
      String name,
      String title,
      String address,
      String path,
      String page,
      @Nullable Integer below,
      List<Integer> numbers) {
    if (below != null && numbers.isEmpty()) {
      throw Refusal.notFound("feed-ends", below);
    }
    List<Integer> held = numbers.subList(0, Math.min(ENTRIES, numbers.size()));
    List<Revision> revisions = snapshots.revisions(held);
    Integer next = numbers.size() > ENTRIES ? held.get(held.size() - 1) : null;
    return new FeedPart(name, title, address, path, page, below, revisions, tallies.of(held), next);
  }
}
