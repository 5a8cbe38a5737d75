package club.yearline.effectivity;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.testing.SmallCatalogue;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Impact rows as a moderator reads them (domain section 7). */
class ImpactTest {

  private static final Records SMALL = SmallCatalogue.records();

  @Test
  void aShortenedBlockTakesItsLastSerialsAway() {
    List<String> rows = impact("lt-LT-0011", b -> block((SerialBlock) b, "LT-0017", 1957));
    assertThat(rows)
        .containsExactly(
            "DISAPPEARS door-latch 1957-1957 LT-0018-LT-0020 3.0/0.0",
            "DISAPPEARS power 1957-1957 LT-0018-LT-0020 3.0/0.0");
  }

  @Test
  void aLengthenedBlockBringsSerials() {
    List<String> rows = impact("lt-LT-0021", b -> block((SerialBlock) b, "LT-0033", 1958));
    assertThat(rows)
        .containsExactly(
            "APPEARS door-latch 1958-1958 LT-0031-LT-0033 0.0/3.0",
            "APPEARS landing-light 1958-1958 LT-0031-LT-0033 0.0/3.0");
  }

  @Test
  void aMovedCutInChangesTheSerialsBetween() {
    List<String> rows =
        impact(
            "latch-rotary",
            c ->
                change(
                    (Change) c, new CutIn("la-2", false, null, null, "lt", "LT-0018", "LT-0018")));
    assertThat(rows).containsExactly("CHANGED door-latch 1957-1957 LT-0015-LT-0017 3.0/3.0");
  }

  @Test
  void anotherYearForABlockMovesItsSerials() {
    List<String> rows = impact("w-31", b -> block((SerialBlock) b, "40", 1962));
    assertThat(rows)
        .containsExactly(
            "DISAPPEARS power 1962-1962 null-null 0.0/0.0",
            "APPEARS power 1962-1962 31-40 0.0/10.0",
            "DISAPPEARS power null-null 31-40 10.0/0.0");
  }

  @Test
  void lostEvidenceIsARowOfItsOwn() {
    List<String> rows = impact("light-start", c -> uncited((Change) c));
    assertThat(rows)
        .containsExactly(
            "EVIDENCE_ONLY landing-light 1958-1958 LT-0021-LT-0030 10.0/10.0",
            "EVIDENCE_ONLY landing-light 1960-1960 LT-0041-LT-0060 20.0/20.0");
  }

  @Test
  void aWithdrawnVariantTakesAllItsAnswersAway() {
    List<Entry> entries = new ArrayList<>(SMALL.entries());
    entries.removeIf(e -> e instanceof SerialBlock b && b.variant().equals("la-5"));
    entries.removeIf(e -> e.key().equals("power-5") || e.key().equals("la-5"));
    assertThat(texts(Records.of(entries, SMALL.pictures())))
        .containsExactly(
            "DISAPPEARS power 1962-1962 null-null 0.0/0.0",
            "DISAPPEARS power 1961-1961 1-40 40.0/0.0");
  }

  private static List<String> impact(String key, UnaryOperator<Entry> edit) {
    return texts(
        Records.of(
            SMALL.entries().stream().map(e -> e.key().equals(key) ? edit.apply(e) : e).toList(),
            SMALL.pictures()));
  }

  private static List<String> texts(Records edited) {
    return Impact.between(Catalogue.of(SMALL), Catalogue.of(edited)).stream()
        .map(
            r ->
                r.kind()
                    + " "
                    + r.feature().key()
                    + " "
                    + r.firstYear()
                    + "-"
                    + r.lastYear()
                    + " "
                    + show(r.series(), r.firstSerial())
                    + "-"
                    + show(r.series(), r.lastSerial())
                    + " "
                    + r.airframesBefore()
                    + "/"
                    + r.airframesAfter())
        .toList();
  }

  private static String show(@Nullable Series series, @Nullable Serial serial) {
    return series == null || serial == null ? "null" : series.show(serial);
  }

  private static SerialBlock block(SerialBlock b, String last, Integer year) {
    return new SerialBlock(
        b.key(), b.series(), b.firstSerial(), last, b.variant(), year, false, List.of());
  }

  private static Change change(Change c, CutIn cutIn) {
    return new Change(
        c.key(), c.feature(), c.title(), null, c.offering(), List.of(cutIn), c.citations());
  }

  private static Change uncited(Change c) {
    return new Change(c.key(), c.feature(), c.title(), null, c.offering(), c.cutIns(), List.of());
  }
}
