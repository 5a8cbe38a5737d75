package club.yearline.effectivity;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Finds the position that a question points to. */
final class Locator {

  private final Catalogue catalogue;

  Locator(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  Located locate(Question question) {
    VariantModel asked = null;
    if (question.variant() != null) {
      asked = catalogue.model(question.variant()).orElse(null);
      if (asked == null) {
        return new Located.UnknownVariant(question.variant());
      }
    }
    if (question.serial() != null) {
      return bySerial(question.serial(), asked, question.year());
    }
    return asked == null || question.year() == null
        ? new Located.Incomplete()
        : byYear(asked, question.year());
  }

  private static Located byYear(VariantModel asked, int year) {
    return asked.produced(year)
        ? new Located.Found(Position.of(asked.variant(), year), null)
        : outside(asked, year);
  }

  private static Located outside(VariantModel asked, int year) {
    return new Located.OutsideProduction(asked.variant(), year, asked.runs());
  }

  private Located bySerial(String text, @Nullable VariantModel asked, @Nullable Integer year) {
    int length = text.strip().length();
    if (length > SerialText.MAX_LENGTH) {
      return new Located.TooLong(length);
    }
    List<SerialMatch> all = catalogue.read(text);
    List<SerialMatch> matches =
        all.stream().filter(m -> asked == null || asked.uses(m.series())).toList();
    if (matches.isEmpty()) {
      return elsewhere(text, blocks(all), asked);
    }
    return blocks(matches).isEmpty()
        ? outsideBlocks(text, matches, asked, year)
        : inBlocks(text, matches, asked, year);
  }

  private static List<SerialBlock> blocks(List<SerialMatch> matches) {
    return matches.stream().flatMap(m -> m.blocks().stream()).toList();
  }

  /** A serial of no series that the asked variant uses may still be another variant's. */
  private static Located elsewhere(
      String text, List<SerialBlock> blocks, @Nullable VariantModel asked) {
    return asked == null || blocks.isEmpty()
        ? new Located.NoSeries(text, asked == null ? null : asked.variant())
        : new Located.Contradiction(text, blocks);
  }

  private static Located outsideBlocks(
      String text,
      List<SerialMatch> matches,
      @Nullable VariantModel asked,
      @Nullable Integer year) {
    if (asked == null || year == null) {
      return new Located.NoBlock(text, matches);
    }
    if (!asked.produced(year)) {
      return outside(asked, year);
    }
    List<Position> positions =
        matches.stream()
            .map(m -> Position.of(asked.variant(), year, m.series(), m.serial()))
            .toList();
    return positions.size() == 1
        ? new Located.Found(positions.get(0), null)
        : new Located.Ambiguous(text, positions);
  }

  private Located inBlocks(
      String text,
      List<SerialMatch> matches,
      @Nullable VariantModel asked,
      @Nullable Integer year) {
    List<Located.Found> candidates = new ArrayList<>(1);
    List<SerialBlock> holding = new ArrayList<>(1);
    for (SerialMatch match : matches) {
      for (SerialBlock block : match.blocks()) {
        holding.add(block);
        if (fits(block, asked, year)) {
          add(candidates, position(match, block, year), block);
        }
      }
    }
    if (candidates.isEmpty()) {
      return new Located.Contradiction(text, holding);
    }
    return candidates.size() == 1
        ? found(candidates.get(0))
        : new Located.Ambiguous(text, candidates.stream().map(Located.Found::position).toList());
  }

  /** Each position once; found by comparing, since hashing one reads its whole variant. */
  private static void add(List<Located.Found> candidates, Position position, SerialBlock block) {
    if (candidates.stream().noneMatch(c -> c.position().equals(position))) {
      candidates.add(new Located.Found(position, block));
    }
  }

  private static boolean fits(
      SerialBlock block, @Nullable VariantModel asked, @Nullable Integer year) {
    boolean ofVariant = asked == null || block.variant().equals(asked.variant().key());
    return ofVariant && (year == null || block.year() == null || year.equals(block.year()));
  }

  private Position position(SerialMatch match, SerialBlock block, @Nullable Integer year) {
    Variant variant = catalogue.variant(block.variant()).orElseThrow();
    Integer of = block.year() == null ? year : block.year();
    return Position.of(variant, of, match.series(), match.serial());
  }

  /** Where the block has no year, the asked year counts, and must be one of production. */
  private Located found(Located.Found only) {
    Position position = only.position();
    SerialBlock block = only.block();
    Integer year = position.year();
    if (block != null && year != null && !Objects.equals(year, block.year())) {
      VariantModel model = catalogue.model(block.variant()).orElseThrow();
      if (!model.produced(year)) {
        return outside(model, year);
      }
    }
    return only;
  }
}
