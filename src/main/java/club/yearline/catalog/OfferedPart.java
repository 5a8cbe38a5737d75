package club.yearline.catalog;

import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Offered;
import jakarta.persistence.Convert;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** An offered value within a version. */
@Embeddable
record OfferedPart(
    String offeredValue,
    @Enumerated(EnumType.STRING) Fit fit,
    @Convert(converter = AsRecorded.class) @Nullable BigDecimal takeRate) {

  static OfferedPart of(Offered offered) {
    return new OfferedPart(offered.value(), offered.fit(), offered.takeRate());
  }

  Offered toOffered(Sweep sweep) {
    return new Offered(sweep.text(offeredValue), fit, takeRate);
  }
}
