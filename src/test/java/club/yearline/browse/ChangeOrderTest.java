package club.yearline.browse;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Feature;
import club.yearline.testing.Sample;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChangeOrderTest {

  @Test
  void putsLastWhatNoYearShows() {
    CutIn beyond = new CutIn("v", false, 1999, 1999, null, null, null);
    Feature latch = Sample.choice("latch", "a", "b");
    Change never = Sample.change("never", "latch", "b", beyond);
    Change start = Sample.change("start", "latch", "a", CutIn.atStart("v"));
    assertThat(keys(latch, never, start)).containsExactly("start", "never");
  }

  @Test
  void goesByTheFirstYearInWhichAnyVariantMayHaveIt() {
    Feature latch = Sample.choice("latch", "a", "b", "c");
    Change start = Sample.change("start", "latch", "a", CutIn.atStart("v"), CutIn.atStart("w"));
    Change own = Sample.change("own", "latch", "b", Sample.fromYear("w", 1963));
    Change late = Sample.change("late", "latch", "c", Sample.fromYear("v", 1966));
    assertThat(keys(latch, late, own, start)).containsExactly("start", "own", "late");
  }

  private static List<String> keys(Feature feature, Change... changes) {
    List<Entry> entries = new ArrayList<>(List.of(changes));
    entries.add(Sample.family("f"));
    entries.add(Sample.variant("v", "f", 1960, 1968));
    entries.add(Sample.variant("w", "f", 1962, 1968));
    entries.add(Sample.source("parts-book"));
    entries.add(feature);
    Catalogue catalogue = Catalogue.of(Sample.records(entries));
    return ChangeOrder.merged(Line.of(feature, catalogue)).stream().map(Change::key).toList();
  }
}
