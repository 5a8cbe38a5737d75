package club.yearline.corrections;

import club.yearline.citation.Stance;
import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** A source that a correction stands on, and where in it. */
@Embeddable
class Ground {

  @Column(name = "source_key")
  private String source;

  private String locator;
  private String stance;
  private @Nullable String note;

  protected Ground() {}

  /**
   * A ground.
   *
   * @param source key of a source, published or proposed by the same correction
   * @param locator where in it: a page, a section, a figure
   * @param stance whether it supports what the entries will say
   */
  static Ground of(String source, String locator, Stance stance, @Nullable String note) {
    Ground ground = new Ground();
    ground.source = source;
    ground.locator = locator;
    ground.stance = stance.code();
    ground.note = note;
    return ground;
  }

  String source() {
    return source;
  }

  String locator() {
    return locator;
  }

  Stance stance() {
    return Stance.valueOf(stance.toUpperCase(Locale.ROOT));
  }

  @Nullable String note() {
    return note;
  }
}
