package club.yearline.catalog;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** Stores numbers as text: H2 would drop trailing zeros, and a catalogue leaves as it came. */
@Converter
class AsRecorded implements AttributeConverter<BigDecimal, String> {

  @Override
  public @Nullable String convertToDatabaseColumn(@Nullable BigDecimal number) {
    return number == null ? null : number.toString();
  }

  @Override
  public @Nullable BigDecimal convertToEntityAttribute(@Nullable String text) {
    return text == null ? null : new BigDecimal(text);
  }
}
