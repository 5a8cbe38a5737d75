package club.yearline.browse;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Entry;
import club.yearline.testing.Catalogues;
import club.yearline.testing.Sample;
import java.util.List;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EntryFieldsTest {

  private final EntryFields fields = fields(Catalogue.of(Sample.records(Sample.turnstone())));

  @Test
  void tellsOnlyTheLinesThatDiffer() {
    CutIn second = CutIn.atStart("other");
    Change before =
        Sample.change("c", "door-latch", "rotary", Sample.fromYear("la-2b", 1966), second);
    Change after =
        Sample.change("c", "door-latch", "rotary", Sample.fromYear("la-2b", 1967), second);
    assertThat(fields.differences(before, after))
        .containsExactly(
            new FieldDifference(
                "records.field.cutIns",
                List.of("Variant la-2b: from 1966 on"),
                List.of("Variant la-2b: from 1967 on")));
  }

  @Test
  void tellsTheOldAndTheNewText() {
    assertThat(fields.differences(Sample.choice("f", "a"), Sample.choice("f", "a", "b")))
        .containsExactly(new FieldDifference("records.field.values", List.of(), List.of("the b")));
  }

  @Test
  void showsListsThatOnlyChangedTheirOrder() {
    assertThat(fields.differences(Sample.choice("f", "a", "b"), Sample.choice("f", "b", "a")))
        .containsExactly(
            new FieldDifference(
                "records.field.values", List.of("the a", "the b"), List.of("the b", "the a")));
  }

  @Test
  void findsNothingBetweenEqualEntries() {
    Entry one = Sample.choice("f", "a", "b");
    assertThat(fields.differences(one, Sample.choice("f", "a", "b"))).isEmpty();
  }

  /** Every field of every kind of entry has a name, and its parts are said in words. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void hasANameForEveryField(long seed) {
    Catalogue catalogue = Catalogue.of(Catalogues.random(seed));
    ResourceBundle texts = ResourceBundle.getBundle("messages/records");
    for (Entry entry : catalogue.records().entries()) {
      for (FieldDifference field : fields(catalogue).differences(null, entry)) {
        assertThat(texts.containsKey(field.field())).as(field.field()).isTrue();
        assertThat(field.after()).noneMatch(line -> line.matches(".*\\b[A-Z][a-zA-Z]+\\[.*"));
      }
    }
  }

  private static EntryFields fields(Catalogue catalogue) {
    return new EntryFields(new PartWords(catalogue, Texts.WORDING, Texts.RECORDS));
  }
}
