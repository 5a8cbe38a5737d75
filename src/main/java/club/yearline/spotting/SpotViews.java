package club.yearline.spotting;

import club.yearline.catalog.Chapters;
import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Visibility;
import club.yearline.web.Choice;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Lays out the page. */
final class SpotViews {

  /** With more families than these, one is chosen before anything is worked out. */
  private static final int FAMILIES_AT_ONCE = 40;

  private final Catalogue catalogue;
  private final Links links;
  private final Wording wording;
  private final Phrases phrases;
  private final Chapters chapters;

  SpotViews(Links links, Wording wording, Phrases phrases, Chapters chapters) {
    this.catalogue = links.reading().catalogue();
    this.links = links;
    this.wording = wording;
    this.phrases = phrases;
    this.chapters = chapters;
  }

  SpotView of(SpotAddress address, @Nullable String typed) {
    boolean choosing =
        address.family() == null && catalogue.records().families().size() > FAMILIES_AT_ONCE;
    Considered considered = choosing ? new Considered(List.of()) : considered(address);
    Ranking ranking = considered.rank(address.seen());
    RankingViews ranked = new RankingViews(links, wording, phrases, address, ranking);
    QuestionViews questions =
        new QuestionViews(links, wording, phrases, address, considered, ranking);
    SpotView.Asking asking = choosing ? null : questions.asking(typed).orElse(null);
    return new SpotView(
        address.isFresh(),
        choosing,
        links.root() + "/spot",
        address.parts(),
        address.ofAllFamilies().parts(),
        families(),
        address.family() == null ? "" : address.family(),
        questions.places(List.of(Visibility.values())),
        ranked.soFar(),
        ranked.open(),
        asking,
        choosing || asking != null ? null : questions.onward(),
        given(address, considered, ranking),
        ranked.shown(),
        ranked.more(),
        ranked.rest(),
        ranked.misfit(),
        choosing ? List.of() : chapters(address, considered));
  }

  private Considered considered(SpotAddress address) {
    String family = address.family();
    return family == null || family.isEmpty()
        ? Spotting.ofAll(catalogue)
        : Spotting.of(catalogue, family).orElseThrow();
  }

  private List<Choice> families() {
    Stream<Choice> each =
        catalogue.records().families().stream()
            .sorted(Comparator.comparing(Family::name, String.CASE_INSENSITIVE_ORDER))
            .map(f -> new Choice(f.key(), f.name()));
    return Stream.concat(Stream.of(new Choice("", phrases.of("spot.family.all"))), each).toList();
  }

  private List<SpotView.Given> given(SpotAddress address, Considered considered, Ranking ranking) {
    Set<String> known =
        considered.features().stream().map(Feature::key).collect(Collectors.toSet());
    List<SpotView.Given> given = new ArrayList<>();
    for (Seen seen : address.seen()) {
      Feature feature = seen.feature();
      boolean counts = known.contains(feature.key()) && !ranking.leftOut().contains(seen);
      given.add(
          new SpotView.Given(
              feature.key(),
              feature.name(),
              wording.value(feature, seen.value()),
              counts ? null : phrases.of("spot.answer.no-count")));
    }
    address.skipped().forEach(f -> given.add(new SpotView.Given(f.key(), f.name(), null, null)));
    return given;
  }

  private List<SpotView.Chapter> chapters(SpotAddress address, Considered considered) {
    Map<String, List<SpotView.Item>> byChapter = new LinkedHashMap<>();
    Map<String, String> notes = notes(address);
    considered.features().stream()
        .filter(f -> f.isNumber() || !f.values().isEmpty())
        .sorted(Comparator.comparing(Feature::chapter).thenComparing(Feature::name))
        .forEach(
            f ->
                byChapter
                    .computeIfAbsent(f.chapter(), k -> new ArrayList<>())
                    .add(new SpotView.Item(f.key(), f.name(), note(f, notes, address))));
    return byChapter.entrySet().stream()
        .map(e -> new SpotView.Chapter(e.getKey(), title(e.getKey()), e.getValue()))
        .toList();
  }

  private String title(String chapter) {
    return chapters.title(chapter).orElseGet(() -> phrases.of("spot.chapter.other"));
  }

  private Map<String, String> notes(SpotAddress address) {
    Map<String, String> notes = new LinkedHashMap<>();
    address
        .seen()
        .forEach(s -> notes.put(s.feature().key(), wording.value(s.feature(), s.value())));
    address.skipped().forEach(f -> notes.put(f.key(), phrases.of("spot.answer.unknown")));
    return notes;
  }

  private @Nullable String note(Feature feature, Map<String, String> notes, SpotAddress address) {
    String told = notes.get(feature.key());
    if (told != null) {
      return told;
    }
    return feature.visibility().seenFrom(address.standing())
        ? null
        : phrases.of("spot.place." + feature.visibility().code());
  }
}
