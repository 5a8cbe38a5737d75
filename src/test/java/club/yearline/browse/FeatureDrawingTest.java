package club.yearline.browse;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.browse.FeatureChart.Area;
import club.yearline.browse.FeatureChart.Caption;
import club.yearline.browse.FeatureChart.Meaning;
import club.yearline.browse.FeatureChart.Part;
import club.yearline.browse.FeatureChart.Row;
import club.yearline.browse.FeatureChart.Span;
import club.yearline.browse.FeatureChart.Tag;
import club.yearline.catalog.Links;
import club.yearline.catalog.Reading;
import club.yearline.catalog.Revision;
import club.yearline.catalog.Snapshot;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Offered;
import club.yearline.testing.Sample;
import club.yearline.testing.SmallCatalogue;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class FeatureDrawingTest {

  @Test
  void drawsARowForEachVariantUnderItsFamily() {
    FeatureChart chart = small("power");
    assertThat(chart.headings())
        .extracting(Caption::text)
        .containsExactly("LA-2 Turnstone", "LA-5 Whimbrel");
    assertThat(chart.rows()).extracting(r -> r.label().text()).containsExactly("LA-2", "LA-5");
    assertThat(chart.ticks()).extracting(t -> t.year()).startsWith(1956).endsWith(1963);
  }

  @Test
  void drawsASplitAtItsProportionWithinTheYear() {
    Span split = row(small("door-latch"), "LA-2").spans().get(1);
    assertThat(split.parts()).hasSize(2);
    Frame first = split.parts().get(0).frame();
    Frame second = split.parts().get(1).frame();
    assertThat(first.width() / (first.width() + second.width())).isEqualTo(0.4);
    assertThat(second.x()).isEqualTo(first.right());
    assertThat(split.notes()).extracting(Caption::text).containsExactly("splits by serial");
    assertThat(split.words())
        .contains("LT-0011 to LT-0014: pull handle", "LT-0015 to LT-0020: rotary latch");
  }

  @Test
  void drawsATransitionInBothPatternsWithTheWord() {
    Span span = row(small("landing-light"), "LA-2A").spans().get(1);
    Part part = span.parts().get(0);
    assertThat(part.state()).isEqualTo("transition");
    assertThat(part.areas()).extracting(Area::fill).containsExactly("p0", "p1");
    assertThat(part.tags()).extracting(Tag::text).containsExactly("A", "B");
    assertThat(span.notes()).extracting(Caption::text).containsExactly("transition");
  }

  @Test
  void leavesAGapWhereTheVariantWasNotBuilt() {
    List<Span> spans = row(small("landing-light"), "LA-2A").spans();
    Frame before = spans.get(0).parts().get(0).frame();
    Frame after = spans.get(1).parts().get(0).frame();
    assertThat(after.x()).isGreaterThan(before.right());
  }

  @Test
  void namesValuesByLetterInTheOrderInWhichTheyWereOffered() {
    assertThat(small("door-latch").key())
        .containsExactly(
            new Meaning("p0", "A", "pull handle"), new Meaning("p1", "B", "rotary latch"));
  }

  @Test
  void marksAnOptionByABrokenBandAndARing() {
    Part part = only(offering(new Offered("rotary", Fit.OPTION, new BigDecimal("0.2"))));
    assertThat(part.areas()).extracting(Area::option).containsExactly(false, true);
    assertThat(part.tags()).extracting(Tag::text).containsExactly("A the sliding", "○B the rotary");
  }

  @Test
  void tellsWhatIsOpenAndWhatIsNotRecordedByBorderAndWord() {
    CutIn bySerialOnly = new CutIn("la-2b", false, null, null, "lt", "LT-9000", "LT-9001");
    Change open = Sample.change("late", "door-latch", "rotary", bySerialOnly);
    FeatureChart chart = drawn(List.of(open), null);
    Span span = chart.rows().get(0).spans().get(0);
    assertThat(span.parts().get(0).state()).isEqualTo("unrecorded");
    assertThat(span.parts().get(0).areas()).isEmpty();
    assertThat(span.notes()).extracting(Caption::text).containsExactly("not recorded");
  }

  @Test
  void drawsFiguresAsStepsWithTheirNumbers() {
    Row row = row(small("power"), "LA-2");
    assertThat(row.spans()).hasSize(2);
    double low = top(row.spans().get(0));
    double high = top(row.spans().get(1));
    assertThat(high).isLessThan(low);
    assertThat(row.spans().get(0).parts().get(0).tags()).extracting(Tag::text).contains("145");
  }

  @Test
  void pinsLinksToTheRevisionThatTheAddressNames() {
    assertThat(row(small("power"), "LA-2").spans().get(1).href())
        .isEqualTo("/expected?variant=la-2&year=1957&rev=3");
  }

  @Test
  void hasNothingToDrawWithoutAVariant() {
    Feature lone = Sample.choice("lone", "a", "b");
    assertThat(
            FeatureDrawing.of(
                lone, List.of(), links(Catalogue.EMPTY), Texts.WORDING, Texts.RECORDS))
        .isEmpty();
  }

  private static double top(Span span) {
    return Double.parseDouble(span.parts().get(0).areas().get(0).points().split("[ ,]")[1]);
  }

  private static Part only(Change change) {
    return drawn(List.of(change), null).rows().get(0).spans().get(0).parts().get(0);
  }

  private static Change offering(Offered option) {
    return new Change(
        "both",
        "door-latch",
        "Both",
        null,
        List.of(new Offered("sliding", Fit.STANDARD, null), option),
        List.of(CutIn.atStart("la-2b")),
        List.of());
  }

  private static FeatureChart drawn(List<Change> changes, @Nullable Entry more) {
    List<Entry> entries = new ArrayList<>(Sample.turnstone());
    entries.removeIf(e -> e instanceof Change);
    entries.addAll(changes);
    if (more != null) {
      entries.add(more);
    }
    return chart(Catalogue.of(Sample.records(entries)), "door-latch");
  }

  private static Row row(FeatureChart chart, String variant) {
    return chart.rows().stream().filter(r -> r.label().text().equals(variant)).findFirst().get();
  }

  private static FeatureChart small(String feature) {
    return chart(Catalogue.of(SmallCatalogue.records()), feature);
  }

  private static FeatureChart chart(Catalogue catalogue, String key) {
    Feature feature = catalogue.feature(key).orElseThrow();
    return FeatureDrawing.of(
            feature, Line.of(feature, catalogue), links(catalogue), Texts.WORDING, Texts.RECORDS)
        .orElseThrow();
  }

  private static Links links(Catalogue catalogue) {
    return new Links(new Reading(new Snapshot(Revision.NONE, catalogue), 3), "");
  }
}
