package club.yearline.fleet;

import club.yearline.accounts.Actor;
import club.yearline.catalog.Snapshot;
import club.yearline.catalog.Snapshots;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Variant;
import club.yearline.fleet.Comparison.Finding;
import club.yearline.fleet.FleetView.FamilyChoices;
import club.yearline.fleet.FleetView.FleetRow;
import club.yearline.fleet.FleetView.Spot;
import club.yearline.web.Choice;
import club.yearline.web.Pages;
import club.yearline.web.Phrases;
import club.yearline.web.Refusal;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.springframework.web.util.UriUtils;

/** Lists airframes, and where each differs from how it was built. */
@Component
class FleetViews {

  private static final int PAGE = 50;
  private static final String VARIANT = "variant/";
  private static final String FAMILY = "family/";

  private final Airframes airframes;
  private final Observations observations;
  private final Snapshots snapshots;
  private final Phrases phrases;

  FleetViews(Airframes airframes, Observations observations, Snapshots snapshots, Phrases phrases) {
    this.airframes = airframes;
    this.observations = observations;
    this.snapshots = snapshots;
    this.phrases = phrases;
  }

  /** What a person asks the register for. */
  record Asked(String root, String of, boolean differing, int page) {

    /** The list's address with the question, without the page. */
    String address() {
      String question = "?of=" + UriUtils.encode(of, StandardCharsets.UTF_8);
      return root + "/fleet" + question + (differing ? "&differing=yes" : "");
    }
  }

  /** An airframe beside what it should be. */
  private record Line(Airframe airframe, Comparison compared) {

    boolean differs() {
      return !compared.differences().isEmpty();
    }
  }

  /** The list. */
  FleetView list(Actor actor, Asked asked) {
    Snapshot newest = snapshots.head();
    Catalogue catalogue = newest.catalogue();
    List<Airframe> visible = airframes.visibleTo(actor.id());
    List<Airframe> chosen =
        visible.stream()
            .filter(a -> isChosen(catalogue, a, asked.of()))
            .sorted(
                Comparator.comparing((Airframe a) -> !a.isOwnedBy(actor))
                    .thenComparing(Airframe.BY_SERIAL))
            .toList();
    List<Airframe> listed = asked.differing() ? differing(catalogue, chosen) : chosen;
    int count = Math.max(1, (listed.size() + PAGE - 1) / PAGE);
    if (asked.page() < 1 || asked.page() > count) {
      throw Refusal.notFound("no-such-page", asked.page(), count);
    }
    List<Airframe> shown = listed.stream().skip((asked.page() - 1L) * PAGE).limit(PAGE).toList();
    Headings headings = new Headings(catalogue, phrases);
    return new FleetView(
        compared(catalogue, shown).stream()
            .map(line -> row(actor, line, headings, asked.root()))
            .toList(),
        phrases.count("fleet.airframes", listed.size()),
        String.valueOf(newest.number()),
        new Pages(asked.address(), asked.page(), count),
        choices(headings, visible),
        asked.of(),
        asked.differing(),
        !visible.isEmpty());
  }

  private List<Airframe> differing(Catalogue catalogue, List<Airframe> of) {
    return compared(catalogue, of).stream().filter(Line::differs).map(Line::airframe).toList();
  }

  private static boolean isChosen(Catalogue catalogue, Airframe airframe, String of) {
    if (of.startsWith(VARIANT)) {
      return airframe.variant().equals(of.substring(VARIANT.length()));
    }
    return !of.startsWith(FAMILY)
        || catalogue
            .variant(airframe.variant())
            .filter(v -> v.family().equals(of.substring(FAMILY.length())))
            .isPresent();
  }

  private List<Line> compared(Catalogue catalogue, List<Airframe> of) {
    Map<Long, List<Observation>> seen =
        observations
            .findByAirframeIdInOrderBySeenOnDescIdDesc(of.stream().map(Airframe::id).toList())
            .stream()
            .collect(Collectors.groupingBy(Observation::airframe));
    return of.stream()
        .map(a -> new Line(a, Comparison.of(catalogue, a, seen.getOrDefault(a.id(), List.of()))))
        .toList();
  }

  private FleetRow row(Actor actor, Line line, Headings headings, String root) {
    Airframe airframe = line.airframe();
    String href = root + "/fleet/" + airframe.id();
    boolean nameless = airframe.registration() == null && airframe.serial() == null;
    return new FleetRow(
        href,
        airframe.registration(),
        airframe.serial(),
        nameless ? headings.variantYear(airframe.seenBy(actor)) : null,
        headings.designation(airframe.variant()),
        airframe.year() == null ? "" : airframe.year().toString(),
        line.compared().findings().stream()
            .map(f -> f.latest().on().toString())
            .max(Comparator.naturalOrder())
            .orElse(null),
        phrases.count("fleet.looked", line.compared().findings().size()),
        airframe.isOwnedBy(actor),
        airframe.isShared(),
        line.compared().differences().stream().map(f -> spot(f, href)).toList());
  }

  private static Spot spot(Finding finding, String href) {
    Feature feature = finding.feature();
    return new Spot(feature.name(), href + "#f-" + feature.key(), finding.match().code());
  }

  /** Families and variants of which there are any. */
  private static List<FamilyChoices> choices(Headings headings, List<Airframe> visible) {
    Set<String> there = visible.stream().map(Airframe::variant).collect(Collectors.toSet());
    return headings.catalogue().records().families().stream()
        .map(f -> choices(headings, f, there))
        .filter(c -> !c.choices().isEmpty())
        .toList();
  }

  private static FamilyChoices choices(Headings headings, Family family, Set<String> there) {
    List<Choice> variants =
        headings.catalogue().variantsOf(family.key()).stream()
            .map(Variant::key)
            .filter(there::contains)
            .map(k -> new Choice(VARIANT + k, headings.designation(k)))
            .toList();
    if (variants.size() < 2) {
      return new FamilyChoices(family.name(), variants);
    }
    String all = headings.phrases().of("fleet.all-of", family.name());
    return new FamilyChoices(
        family.name(),
        Stream.concat(Stream.of(new Choice(FAMILY + family.key(), all)), variants.stream())
            .toList());
  }
}
