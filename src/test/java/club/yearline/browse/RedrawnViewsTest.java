package club.yearline.browse;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.browse.Between.Comparison;
import club.yearline.browse.FeatureChart.Meaning;
import club.yearline.browse.FeatureChart.Row;
import club.yearline.browse.Redrawn.Pair;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Impact;
import club.yearline.testing.Sample;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RedrawnViewsTest {

  @Test
  void drawsBothStatesOnTheSameYearsAndInTheSamePatterns() {
    List<Entry> later =
        Sample.with(
            Sample.turnstone(),
            Sample.change(
                "door-latch-rotary", "door-latch", "rotary", Sample.fromYear("la-2b", 1967)));
    Redrawn redrawn = redrawn(Sample.turnstone(), later);
    assertThat(redrawn.named()).isEmpty();
    assertThat(redrawn.pairs()).hasSize(1);
    Pair pair = redrawn.pairs().get(0);
    assertThat(pair.before().ticks()).isEqualTo(pair.after().ticks());
    assertThat(pair.before().width()).isEqualTo(pair.after().width());
    assertThat(pair.before().key()).isEqualTo(pair.after().key());
    assertThat(pair.before().key()).extracting(Meaning::letter).containsExactly("A", "B");
    assertThat(words(pair.before()))
        .anyMatch(w -> w.contains("1964 to 1965") && w.contains("the sliding"));
    assertThat(words(pair.after()))
        .anyMatch(w -> w.contains("1964 to 1966") && w.contains("the sliding"));
    assertThat(pair.after().rows().get(0).spans()).allMatch(s -> s.href() == null);
  }

  @Test
  void leavesOutTheSideThatHasNothing() {
    List<Entry> more = new ArrayList<>(Sample.turnstone());
    more.add(Sample.choice("fin", "round"));
    more.add(Sample.change("fin-round", "fin", "round", CutIn.atStart("la-2b")));
    Pair added = redrawn(Sample.turnstone(), more).pairs().get(0);
    assertThat(added.before()).isNull();
    assertThat(added.either()).isSameAs(added.after());
    Pair gone = redrawn(more, Sample.turnstone()).pairs().get(0);
    assertThat(gone.after()).isNull();
    assertThat(gone.either()).isSameAs(gone.before());
  }

  @Test
  void drawsSixFeaturesAndNamesTheOthers() {
    List<Entry> more = new ArrayList<>(Sample.turnstone());
    for (int i = 0; i < 50; i++) {
      more.add(Sample.choice("f" + i, "a"));
      more.add(Sample.change("c" + i, "f" + i, "a", CutIn.atStart("la-2b")));
    }
    Redrawn redrawn = redrawn(Sample.turnstone(), more);
    assertThat(redrawn.pairs()).hasSize(6);
    assertThat(redrawn.named()).hasSize(40).allMatch(name -> name.startsWith("Feature f"));
    assertThat(redrawn.more()).isEqualTo(4);
  }

  @Test
  void drawsNothingWhereOnlyTheEvidenceDiffers() {
    List<Entry> unsourced = Sample.with(Sample.turnstone(), unsourced());
    assertThat(redrawn(Sample.turnstone(), unsourced)).isEqualTo(Redrawn.NONE);
  }

  private static Entry unsourced() {
    Change cited =
        Sample.change("door-latch-rotary", "door-latch", "rotary", Sample.fromYear("la-2b", 1966));
    return new Change(
        cited.key(),
        cited.feature(),
        cited.title(),
        null,
        cited.offering(),
        cited.cutIns(),
        List.of());
  }

  private static List<String> words(FeatureChart chart) {
    return chart.rows().stream().map(Row::spans).flatMap(List::stream).map(s -> s.words()).toList();
  }

  private static Redrawn redrawn(List<Entry> before, List<Entry> after) {
    Catalogue was = Catalogue.of(Sample.records(before));
    Catalogue is = Catalogue.of(Sample.records(after));
    Comparison comparison =
        new Comparison(
            was, is, Edits.between(was.records(), is.records()), Impact.between(was, is));
    return new RedrawnViews(comparison, Texts.WORDING, Texts.RECORDS).draw();
  }
}
