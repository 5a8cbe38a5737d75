package club.yearline.expected;

import club.yearline.catalog.Wording;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Retrofit;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Retrofits as shown. */
final class Fittings {

  private final Catalogue catalogue;
  private final Phrases phrases;
  private final Wording wording;

  Fittings(Catalogue catalogue, Wording wording, Phrases phrases) {
    this.catalogue = catalogue;
    this.wording = wording;
    this.phrases = phrases;
  }

  List<Row.Fitting> of(Answer answer, Position position) {
    return answer.retrofits().stream().map(r -> fitting(answer, r, position)).toList();
  }

  private Row.Fitting fitting(Answer answer, Retrofit retrofit, Position position) {
    boolean fits = retrofit.fits(position);
    String note = retrofit.note() == null ? "" : ". " + retrofit.note();
    return new Row.Fitting(
        wording.value(answer.feature(), retrofit.value()),
        ", " + retrofit.document() + note,
        catalogue.isMandatory(retrofit),
        fits,
        phrases.of(fits ? fitting(position) : "expected.retrofit.outside", range(retrofit)));
  }

  private static String fitting(Position position) {
    return position.serial() == null ? "expected.retrofit.fits.year" : "expected.retrofit.fits";
  }

  /** For which airframes a retrofit is recorded. */
  private String range(Retrofit retrofit) {
    List<String> parts = new ArrayList<>();
    add(parts, retrofit.firstYear(), retrofit.lastYear());
    add(parts, retrofit.firstSerial(), retrofit.lastSerial());
    return parts.isEmpty() ? phrases.of("expected.range.all") : String.join(", ", parts);
  }

  private void add(List<String> parts, @Nullable Object first, @Nullable Object last) {
    if (first != null && last != null) {
      parts.add(wording.range(first.toString(), last.toString()));
    } else if (first != null) {
      parts.add(phrases.of("expected.range.from", first));
    } else if (last != null) {
      parts.add(phrases.of("expected.range.to", last));
    }
  }
}
