package club.yearline.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SeedsTest {

  @Test
  void aFailureNamesItsSeedAndTheFewRecordsThatStillFail() {
    assumeThat(Long.getLong("yearline.seed")).isNull();
    assertThatThrownBy(
            () ->
                Seeds.check(
                    50,
                    (records, dice) -> assertThat(records.changes()).hasSizeLessThanOrEqualTo(8)))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("-Dyearline.seed=")
        .satisfies(e -> assertThat(e.getMessage().split("\n +Change\\[")).hasSize(10))
        .hasMessageNotContaining("SerialBlock[")
        .hasMessageNotContaining("Retrofit[");
  }

  @Test
  void aLawThatHoldsIsCheckedOnEverySeed() {
    assumeThat(Long.getLong("yearline.seed")).isNull();
    List<Integer> sizes = new ArrayList<>();
    Seeds.check(20, (records, dice) -> sizes.add(records.size()));
    assertThat(sizes).hasSize(20);
    assertThat(sizes.stream().distinct().count()).isGreaterThan(5);
  }
}
