package club.yearline.testing;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.Findings;
import org.junit.jupiter.api.Test;

class SampleTest {

  @Test
  void theWholeCatalogueHasNoFindings() {
    assertThat(Findings.in(Sample.records(Sample.turnstone()))).isEmpty();
  }
}
