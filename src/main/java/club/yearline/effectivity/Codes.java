package club.yearline.effectivity;

import java.util.Locale;

/** Words for constants: {@code OFTEN_CHANGED} is written {@code often-changed}. */
final class Codes {

  private Codes() {}

  static String of(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
