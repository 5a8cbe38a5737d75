package club.yearline.api;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.ProductionRun;
import club.yearline.effectivity.Question;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.SerialMatch;
import club.yearline.effectivity.SerialText;
import club.yearline.web.Refusal;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Finds the position a call asks about, or refuses with what helps to ask better. */
final class Places {

  private Places() {}

  static Located.Found find(Catalogue catalogue, Question question) {
    Located located = catalogue.locate(question);
    if (located instanceof Located.Found found) {
      return found;
    }
    throw refusal(located, question);
  }

  /** The position of a variant and year that a parameter gives as {@code VARIANT:YEAR}. */
  static Located.Found variantYear(Catalogue catalogue, String field, String text) {
    int colon = text.lastIndexOf(':');
    Integer year = colon < 0 ? null : year(text.substring(colon + 1).strip());
    if (year == null) {
      throw Refusal.notUnderstood("variant-year-unreadable", text).at(field, "field.variant-year");
    }
    Located located = catalogue.locate(new Question(text.substring(0, colon).strip(), year, null));
    if (located instanceof Located.Found found) {
      return found;
    }
    throw located instanceof Located.OutsideProduction outside
        ? outside(outside, field)
        : Refusal.notFound("unknown-variant", text.substring(0, colon).strip()).at(field);
  }

  private static @Nullable Integer year(String text) {
    try {
      return Integer.valueOf(text);
    } catch (NumberFormatException e) {
      return null;
    }
  }

  private static Refusal refusal(Located located, Question question) {
    if (located instanceof Located.TooLong tooLong) {
      return Refusal.notUnderstood("serial-too-long", tooLong.length(), SerialText.MAX_LENGTH)
          .at("serial", "field.serial-too-long", SerialText.MAX_LENGTH);
    }
    if (located instanceof Located.UnknownVariant unknown) {
      return Refusal.notFound("unknown-variant", unknown.key()).at("variant");
    }
    if (located instanceof Located.NoSeries none) {
      return noSeries(none);
    }
    if (located instanceof Located.NoBlock noBlock) {
      return Refusal.unprocessable("serial-in-no-block", noBlock.text())
          .at("serial")
          .with("candidates", noBlock.matches().stream().map(Places::near).toList());
    }
    if (located instanceof Located.Ambiguous ambiguous) {
      return Refusal.unprocessable("serial-ambiguous", ambiguous.text())
          .at("serial")
          .with("candidates", ambiguous.candidates().stream().map(PositionView::of).toList());
    }
    if (located instanceof Located.Contradiction contradiction) {
      return contradiction(contradiction);
    }
    return located instanceof Located.OutsideProduction outside
        ? outside(outside, "year")
        : incomplete(question);
  }

  private static Refusal noSeries(Located.NoSeries none) {
    return none.variant() == null
        ? Refusal.notFound("serial-in-no-series", none.text()).at("serial")
        : Refusal.unprocessable("serial-not-of-variant", none.text(), none.variant().designation())
            .at("serial");
  }

  private static Refusal contradiction(Located.Contradiction contradiction) {
    List<SerialBlock> blocks = contradiction.blocks();
    return Refusal.unprocessable("serial-contradicts", contradiction.text(), blocks(blocks))
        .at("serial")
        .with("candidates", blocks.stream().map(EntryViews.BlockView::of).toList());
  }

  private static Refusal outside(Located.OutsideProduction outside, String field) {
    return Refusal.unprocessable(
            "outside-production",
            outside.variant().designation(),
            outside.year(),
            runs(outside.runs()))
        .at(field)
        .with("runs", outside.runs().stream().map(EntryViews.RunView::of).toList());
  }

  private static Refusal incomplete(Question question) {
    Refusal refusal = Refusal.notUnderstood("question-incomplete");
    if (question.variant() == null) {
      refusal = refusal.at("variant", "field.variant-needed");
    }
    return question.year() == null ? refusal.at("year", "field.year-needed") : refusal;
  }

  private static String blocks(List<SerialBlock> blocks) {
    return blocks.stream()
        .map(b -> b.variant() + (b.year() == null ? "" : " " + b.year()) + " (" + b.key() + ")")
        .collect(Collectors.joining(", "));
  }

  private static String runs(List<ProductionRun> runs) {
    return runs.stream()
        .map(r -> r.firstYear() + "–" + (r.lastYear() == null ? "" : r.lastYear()))
        .collect(Collectors.joining(", "));
  }

  private static Near near(SerialMatch match) {
    return new Near(
        match.series().key(),
        match.text(),
        EntryViews.BlockView.ofNullable(match.below()),
        EntryViews.BlockView.ofNullable(match.above()));
  }

  /** A serial outside all blocks, with the nearest ones. */
  record Near(
      String series,
      String serial,
      EntryViews.@Nullable BlockView below,
      EntryViews.@Nullable BlockView above) {}
}
