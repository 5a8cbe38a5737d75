package club.yearline.expected;

import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.SoldName;
import club.yearline.effectivity.VariantModel;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The data plate of a position: what it is, stamped. */
public final class Plate {

  private final Catalogue catalogue;
  private final Links links;
  private final Wording wording;
  private final Phrases phrases;

  /** For the pages of one reading. */
  public Plate(Links links, Wording wording, Phrases phrases) {
    this.catalogue = links.reading().catalogue();
    this.links = links;
    this.wording = wording;
    this.phrases = phrases;
  }

  /** A position in one line, serial first. */
  public String heading(Position position) {
    String designation = position.variant().designation();
    String what =
        position.year() == null
            ? designation
            : phrases.of("expected.variant-year", designation, position.year());
    String serial = position.serialText();
    return serial == null ? what : phrases.of("expected.serial-of", serial, what);
  }

  /** The names that the variant was sold under in the position's year. */
  public @Nullable String names(Position position) {
    Integer year = position.year();
    List<String> names =
        position.variant().names().stream()
            .filter(n -> year == null || covers(n, year))
            .map(SoldName::name)
            .distinct()
            .toList();
    return names.isEmpty()
        ? null
        : phrases.of("expected.sold-as", String.join(phrases.of("expected.and"), names));
  }

  private static boolean covers(SoldName name, int year) {
    return (name.firstYear() == null || name.firstYear() <= year)
        && (name.lastYear() == null || year <= name.lastYear());
  }

  /** The fields of the plate. */
  public List<Sheet.Stamp> stamps(Located.Found found) {
    Position position = found.position();
    VariantModel model = catalogue.model(position.variant().key()).orElseThrow();
    Family family = model.family();
    List<Sheet.Stamp> stamps = new ArrayList<>();
    stamps.add(
        stamp(
            "variant", position.variant().designation(), links.variant(position.variant().key())));
    stamps.add(
        new Sheet.Stamp(
            yearName(family),
            position.year() == null
                ? phrases.of("expected.year.unknown")
                : position.year().toString(),
            null));
    if (position.serialText() != null) {
      stamps.add(stamp("serial", position.serialText(), null));
    }
    stamps.add(stamp("family", family.name(), links.family(family.key())));
    stamps.add(stamp("block", blocks(found, model), null));
    return stamps;
  }

  /** What a year is in the family. */
  String yearName(Family family) {
    return phrases.of("expected.year." + family.yearMeans().code());
  }

  /** A block's serials, as stamped. */
  String serials(SerialBlock block) {
    String first = stamped(block, block.firstSerial());
    return block.lastSerial() == null
        ? phrases.of("expected.and-on", first)
        : wording.range(first, stamped(block, block.lastSerial()));
  }

  private String blocks(Located.Found found, VariantModel model) {
    if (found.block() != null) {
      return serials(found.block());
    }
    if (found.outsideBlocks()) {
      return phrases.of("expected.block.outside");
    }
    String all =
        model.blocks().stream()
            .filter(b -> Objects.equals(b.year(), found.position().year()))
            .map(this::serials)
            .collect(Collectors.joining(phrases.of("expected.and")));
    return all.isEmpty() ? phrases.of("expected.block.none") : all;
  }

  private String stamped(SerialBlock block, String serial) {
    return catalogue
        .series(block.series())
        .flatMap(s -> s.read(serial).map(s::show))
        .orElse(serial);
  }

  private Sheet.Stamp stamp(String name, String text, @Nullable String href) {
    return new Sheet.Stamp(phrases.of("expected.plate." + name), text, href);
  }
}
