package club.yearline.exchange;

import club.yearline.accounts.Actor;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Question;
import club.yearline.effectivity.Serial;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Series;
import club.yearline.exchange.DemoParts.Part;
import club.yearline.fleet.NewAirframe;
import club.yearline.fleet.RegisterFilling.Given;
import club.yearline.fleet.Seen;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Makes the demo's register: invented airframes and what was seen on them, from {@link TrueCutIn
 * stated truths}. Everything follows from the seed.
 */
final class DemoRegister {

  /** One at which each truth can be found; at others chance hides one or two, as in life. */
  static final long SEED = 19_560_413L;

  /** Airframes near each true cut-in, so that an estimate has something to find. */
  private static final int NEAR = 9;

  private static final int ELSEWHERE = 44;
  private static final int MARGIN = 12;

  private static final double HAS_MARK = 0.8;
  private static final double SHARED = 0.6;
  private static final double SERIAL_SHOWN = 0.5;
  private static final double LOOKED_AT_TOLD = 0.92;
  private static final double LOOKED_AT = 0.16;
  private static final double LOOKED_BEFORE = 0.5;

  private static final LocalDate FIRST_DAY = LocalDate.of(2019, 4, 6);
  private static final int DAYS = 2300;

  private final Catalogue catalogue;
  private final List<TrueCutIn> truths;
  private final List<Actor> owners;
  private final SplittableRandom random;
  private final DemoParts parts;

  DemoRegister(Catalogue catalogue, Collection<Actor> owners, long seed) {
    this.catalogue = catalogue;
    this.truths = TrueCutIn.all(catalogue);
    this.owners = List.copyOf(owners);
    this.random = new SplittableRandom(seed);
    this.parts = new DemoParts(catalogue, truths, random.split());
  }

  /** The airframes, in the order of their serials. */
  List<Given> make() {
    Map<String, Position> chosen = new TreeMap<>();
    truths.forEach(t -> t.exchanged().forEach(s -> add(chosen, t.series(), s)));
    truths.forEach(t -> chooseNear(chosen, t));
    int size = chosen.size() + ELSEWHERE;
    List<SerialBlock> blocks =
        catalogue.records().blocks().stream().filter(b -> b.lastSerial() != null).toList();
    while (chosen.size() < size) {
      chooseIn(chosen, blocks.get(random.nextInt(blocks.size())));
    }
    return chosen.values().stream().map(this::given).toList();
  }

  private void chooseNear(Map<String, Position> chosen, TrueCutIn truth) {
    long from = truth.first().ordinal() - MARGIN;
    long to = truth.settled().ordinal() + MARGIN;
    int more = chosen.size() + NEAR;
    while (chosen.size() < more) {
      add(chosen, truth.series(), Serial.of(random.nextLong(from, to)));
    }
  }

  private void chooseIn(Map<String, Position> chosen, SerialBlock block) {
    Series series = catalogue.series(block.series()).orElseThrow();
    Serial first = series.read(block.firstSerial()).orElseThrow();
    Serial last = series.read(String.valueOf(block.lastSerial())).orElseThrow();
    add(chosen, series, Serial.of(random.nextLong(first.ordinal(), last.ordinal() + 1)));
  }

  /** Serials of no block, and those that two variants share, are left to be typed by hand. */
  private void add(Map<String, Position> chosen, Series series, Serial serial) {
    String text = series.show(serial);
    if (catalogue.locate(new Question(null, null, text)) instanceof Located.Found found) {
      chosen.put(text, found.position());
    }
  }

  private Given given(Position position) {
    List<Seen> seen = new ArrayList<>();
    LocalDate day = FIRST_DAY.plusDays(random.nextInt(DAYS));
    for (Part part : parts.of(position).values()) {
      if (random.nextDouble() < chance(part)) {
        if (part.wasExchanged() && random.nextDouble() < LOOKED_BEFORE) {
          seen.add(seen(part, part.made(), day.minusDays(400)));
        }
        seen.add(seen(part, part.now(), day));
      }
    }
    return new Given(
        owners.get(random.nextInt(owners.size())),
        new NewAirframe(position, mark(), null),
        random.nextDouble() < SHARED,
        random.nextDouble() < SERIAL_SHOWN,
        seen);
  }

  private static double chance(Part part) {
    if (part.stated()) {
      return 1;
    }
    return part.told() ? LOOKED_AT_TOLD : LOOKED_AT;
  }

  private static Seen seen(Part part, String value, LocalDate day) {
    return new Seen(part.feature().key(), value, day, null, null, List.of());
  }

  /** No state has marks that begin with Q. */
  private @Nullable String mark() {
    if (random.nextDouble() >= HAS_MARK) {
      return null;
    }
    StringBuilder mark = new StringBuilder("QT-");
    for (int i = 0; i < 3; i++) {
      mark.append((char) ('A' + random.nextInt('Z' - 'A' + 1)));
    }
    return mark.toString();
  }
}
