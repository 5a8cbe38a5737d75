package club.yearline.corrections;

import club.yearline.effectivity.EntryKind;
import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import java.util.Arrays;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Stores the module's words as the codes that addresses and message keys use. */
final class Codes {

  private Codes() {}

  private abstract static class ByCode<E extends Enum<E>> implements AttributeConverter<E, String> {

    private final Class<E> type;
    private final Function<E, String> code;

    ByCode(Class<E> type, Function<E, String> code) {
      this.type = type;
      this.code = code;
    }

    @Override
    public @Nullable String convertToDatabaseColumn(@Nullable E word) {
      return word == null ? null : code.apply(word);
    }

    @Override
    public @Nullable E convertToEntityAttribute(@Nullable String stored) {
      return stored == null
          ? null
          : Arrays.stream(type.getEnumConstants())
              .filter(word -> code.apply(word).equals(stored))
              .findFirst()
              .orElseThrow(() -> new IllegalStateException("Unknown " + type + " " + stored));
    }
  }

  @Converter(autoApply = true)
  static class OfState extends ByCode<State> {
    OfState() {
      super(State.class, State::code);
    }
  }

  @Converter(autoApply = true)
  static class OfOrigin extends ByCode<Origin> {
    OfOrigin() {
      super(Origin.class, Origin::code);
    }
  }

  @Converter(autoApply = true)
  static class OfEvent extends ByCode<CorrectionEvent.What> {
    OfEvent() {
      super(CorrectionEvent.What.class, CorrectionEvent.What::code);
    }
  }

  @Converter(autoApply = true)
  static class OfPurpose extends ByCode<CorrectionFile.Purpose> {
    OfPurpose() {
      super(CorrectionFile.Purpose.class, CorrectionFile.Purpose::code);
    }
  }

  /** Not applied by itself: the catalogue stores kinds in its own way. */
  @Converter
  static class OfKind extends ByCode<EntryKind> {
    OfKind() {
      super(EntryKind.class, EntryKind::code);
    }
  }
}
