package club.yearline.inspection;

import club.yearline.citation.SourceKind;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Possible;
import club.yearline.effectivity.Records;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.Serial;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.SerialMatch;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.State;
import club.yearline.effectivity.Variant;
import club.yearline.spotting.Seen;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Findings word by word from the definition. A year is asked serial by serial: every plain and
 * lettered serial of every series, as far as a block of the variant and year holds it.
 */
final class SlowFindings {

  private static final int MOST_ORDINAL = 62;

  private final Catalogue catalogue;
  private final Records records;
  private @Nullable SlowFindings withoutRetrofits;
  private final Map<String, List<Set<List<Offered>>>> answers = new TreeMap<>();
  private final Map<String, List<Position>> concerned = new TreeMap<>();

  SlowFindings(Catalogue catalogue) {
    this.catalogue = catalogue;
    this.records = catalogue.records();
  }

  Match match(Position position, Seen seen) {
    List<Set<List<Offered>>> all = possible(position, seen.feature().key());
    Set<List<Offered>> offerings = new HashSet<>();
    all.forEach(offerings::addAll);
    boolean nothing = all.isEmpty() || offerings.contains(List.<Offered>of());
    List<List<Fit>> fits = new ArrayList<>();
    for (List<Offered> offering : offerings) {
      List<Fit> as = new ArrayList<>();
      for (Offered offered : offering) {
        if (equal(seen, offered.value())) {
          as.add(offered.fit());
        }
      }
      fits.add(as);
    }
    boolean inAll = !all.isEmpty() && fits.stream().noneMatch(List::isEmpty);
    boolean inSome = fits.stream().anyMatch(f -> !f.isEmpty());
    if (inAll && fits.stream().allMatch(f -> f.contains(Fit.STANDARD))) {
      return Match.AS_BUILT;
    }
    if (inAll) {
      return Match.AS_BUILT_OPTION;
    }
    if (inSome) {
      return Match.EITHER;
    }
    boolean retrofit = recorded(position, seen).anyMatch(r -> equal(seen, r.value()));
    return retrofit ? Match.RETROFIT : nothing ? Match.NOT_RECORDED : Match.DIFFERS;
  }

  Set<String> missing(Position position, Seen seen) {
    Set<String> missing = new HashSet<>();
    recorded(position, seen)
        .filter(this::isMandatory)
        .filter(r -> !equal(seen, r.value()))
        .forEach(r -> missing.add(r.key()));
    return missing;
  }

  private boolean isMandatory(Retrofit retrofit) {
    return retrofit.citations().stream()
        .filter(c -> c.supports())
        .anyMatch(
            c ->
                records.sources().stream()
                    .anyMatch(
                        s ->
                            s.key().equals(c.source())
                                && s.source().kind() == SourceKind.AIRWORTHINESS_DIRECTIVE));
  }

  /** Each variant and year in which the value stands so, as "variant year". */
  Set<String> years(Seen seen, Set<Match> wanted) {
    Set<String> years = new HashSet<>();
    for (Variant variant : records.variants()) {
      boolean has =
          records.changes().stream()
              .filter(c -> c.feature().equals(seen.feature().key()))
              .flatMap(c -> c.cutIns().stream())
              .anyMatch(c -> c.variant().equals(variant.key()));
      for (int year : catalogue.model(variant.key()).orElseThrow().years()) {
        Position there = Position.of(variant, year);
        if (has && wanted.contains(matchWithoutRetrofits(there, seen))) {
          years.add(variant.key() + " " + year);
        }
      }
    }
    return years;
  }

  private Match matchWithoutRetrofits(Position there, Seen seen) {
    if (withoutRetrofits == null) {
      withoutRetrofits =
          new SlowFindings(
              Catalogue.of(
                  Records.of(
                      records.entries().stream().filter(e -> !(e instanceof Retrofit)).toList(),
                      records.pictures())));
    }
    return withoutRetrofits.match(there, seen);
  }

  private Stream<Retrofit> recorded(Position position, Seen seen) {
    return records.retrofits().stream()
        .filter(r -> r.feature().equals(seen.feature().key()))
        .filter(r -> r.fits(position));
  }

  static boolean equal(Seen seen, String recorded) {
    return seen.feature().isNumber()
        ? new BigDecimal(seen.value()).compareTo(new BigDecimal(recorded)) == 0
        : seen.value().equals(recorded);
  }

  /** For each serial concerned, the offerings possible there; none for a feature not its own. */
  private List<Set<List<Offered>>> possible(Position position, String feature) {
    return answers.computeIfAbsent(
        position + " " + feature,
        k -> {
          List<Set<List<Offered>>> each = new ArrayList<>();
          for (Position one :
              concerned.computeIfAbsent(position.toString(), p -> serials(position))) {
            catalogue.expected(one).stream()
                .filter(a -> a.feature().key().equals(feature))
                .forEach(a -> each.add(offerings(a)));
          }
          return each;
        });
  }

  private static Set<List<Offered>> offerings(Answer answer) {
    if (answer.state() == State.SPLITS) {
      throw new AssertionError("A serial's answer splits");
    }
    Set<List<Offered>> offerings = new HashSet<>();
    if (answer.state() == State.UNRECORDED) {
      offerings.add(List.of());
    }
    for (Possible possible : answer.possible()) {
      offerings.add(List.copyOf(possible.offering()));
    }
    return offerings;
  }

  private List<Position> serials(Position position) {
    if (position.serial() != null || position.year() == null) {
      return List.of(position);
    }
    Map<String, Position> found = new LinkedHashMap<>();
    for (Series series : records.series()) {
      for (int ordinal = 0; ordinal <= MOST_ORDINAL; ordinal++) {
        for (char suffix = 'A' - 1; suffix <= 'Z'; suffix++) {
          Serial serial = new Serial(ordinal, suffix < 'A' ? Serial.NO_SUFFIX : suffix);
          if (isOf(position, series, serial)) {
            found.put(
                series.key() + serial,
                Position.of(position.variant(), position.year(), series, serial));
          }
        }
      }
    }
    return found.isEmpty() ? List.of(position) : List.copyOf(found.values());
  }

  private boolean isOf(Position position, Series series, Serial serial) {
    for (SerialMatch match : catalogue.read(series.show(serial))) {
      if (match.series().key().equals(series.key()) && match.serial().equals(serial)) {
        for (SerialBlock block : match.blocks()) {
          if (block.variant().equals(position.variant().key())
              && position.year().equals(block.year())) {
            return true;
          }
        }
      }
    }
    return false;
  }
}
