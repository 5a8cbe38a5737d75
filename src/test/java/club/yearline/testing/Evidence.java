package club.yearline.testing;

import club.yearline.citation.Citation;
import club.yearline.citation.Source;
import club.yearline.citation.SourceKind;
import club.yearline.citation.Stance;
import club.yearline.effectivity.SourceEntry;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Random sources, citations of them, and awkward texts. */
final class Evidence {

  private final Dice dice;
  private final List<SourceEntry> sources = new ArrayList<>();
  private int citations;

  Evidence(Dice dice) {
    this.dice = dice;
    int count = dice.between(1, 4);
    for (int i = 0; i < count; i++) {
      sources.add(new SourceEntry(source("source-" + i)));
    }
  }

  List<SourceEntry> sources() {
    return sources;
  }

  private Source source(String key) {
    return new Source(
        key,
        dice.pick(SourceKind.values()),
        "Title of " + key,
        dice.maybe(0.5, "Berg, Ulla; Lind, Per"),
        dice.maybe(0.3, "Lindmark Aero"),
        dice.maybe(0.3, "LA-" + dice.between(1, 999) + " rev. B"),
        dice.maybe(0.7, dice.pick("1966", "1966-04", "1966-04-12", "196X", "1966?", "1965/1967")),
        dice.maybe(0.3, "https://example.org/" + key + "?a=1,2"),
        dice.maybe(0.3, LocalDate.of(2020, 1, dice.between(1, 31))),
        text());
  }

  /** No, one or two citations; each of the whole record, or of the given variant's cut-in. */
  List<Citation> citations(String variant) {
    List<Citation> made = new ArrayList<>();
    int count = dice.between(0, 2);
    for (int i = 0; i < count; i++) {
      made.add(
          new Citation(
              "citation-" + citations++,
              dice.maybe(0.4, variant),
              dice.pick(sources).key(),
              dice.maybe(0.6, "p. " + dice.between(1, 300) + ", fig. 3"),
              dice.chance(0.75) ? Stance.SUPPORTS : Stance.DISPUTES,
              text()));
    }
    return made;
  }

  /** A text or null; among them such as a CSV must quote. */
  String text() {
    return dice.maybe(
        0.4,
        dice.pick(
            "Plain text.",
            "Commas, many, commas",
            "She said \"no\"",
            "Two\nlines, and a\n\nparagraph",
            "Carriage\r\nreturn",
            " blank at both ends ",
            "#not a comment",
            "Ærø – “Größe” 日本 \uD83D\uDEE9",
            "'=1+1"));
  }
}
