package club.yearline.compare;

import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Variant;
import club.yearline.effectivity.VariantModel;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Finds the positions that were chosen, or says why there are none. */
final class Choosing {

  /** The most columns that a table still shows side by side. */
  static final int MOST = 6;

  private static final int BAD_REQUEST = 400;
  private static final int NOT_FOUND = 404;
  private static final int UNPROCESSABLE = 422;
  private static final int ECHO = 60;

  private final Links links;
  private final Wording wording;
  private final Phrases phrases;
  private final Address address;
  private final List<Column> columns = new ArrayList<>();
  private final List<Trouble> troubles = new ArrayList<>();

  /** Looks up what an address names. */
  Choosing(Links links, Wording wording, Phrases phrases, Address address) {
    this.links = links;
    this.wording = wording;
    this.phrases = phrases;
    this.address = address;
    if (address.chosen().size() > MOST) {
      troubles.add(trouble(BAD_REQUEST, "too-many", List.of(), address.chosen().size(), MOST));
    }
    address.chosen().stream().limit(MOST).forEach(this::look);
  }

  /** The columns found. */
  List<Column> columns() {
    return columns;
  }

  /** What cannot be compared. */
  List<Trouble> troubles() {
    return troubles;
  }

  private void look(Chosen chosen) {
    Catalogue catalogue = links.reading().catalogue();
    Optional<VariantModel> model = catalogue.model(chosen.variant());
    if (model.isEmpty()) {
      String code = chosen.variant().isEmpty() ? "no-variant-given" : "no-variant";
      int status = chosen.variant().isEmpty() ? BAD_REQUEST : NOT_FOUND;
      String named = chosen.variant().isEmpty() ? chosen.year() : chosen.variant();
      troubles.add(trouble(status, code, List.of(), shortened(named)));
      return;
    }
    Variant variant = model.get().variant();
    if (model.get().years().length == 0) {
      troubles.add(trouble(UNPROCESSABLE, "no-years", List.of(), variant.designation()));
    } else if (!chosen.hasReadableYear()) {
      String code = chosen.year().isEmpty() ? "no-year" : "year";
      List<Trouble.Way> ways = ways(model.get(), chosen);
      troubles.add(
          trouble(BAD_REQUEST, code, ways, variant.designation(), shortened(chosen.year())));
    } else if (!model.get().produced(Integer.parseInt(chosen.year()))) {
      List<Trouble.Way> ways = ways(model.get(), chosen);
      troubles.add(
          trouble(
              UNPROCESSABLE,
              "outside",
              ways,
              variant.designation(),
              shortened(chosen.year()),
              runs(model.get())));
    } else {
      columns.add(Column.of(catalogue, Position.of(variant, Integer.parseInt(chosen.year()))));
    }
  }

  private String runs(VariantModel model) {
    return model.runs().stream()
        .map(r -> wording.years(r.firstYear(), r.lastYear()))
        .collect(Collectors.joining(phrases.of("compare.and")));
  }

  private List<Trouble.Way> ways(VariantModel model, Chosen chosen) {
    return IntStream.of(model.years())
        .mapToObj(
            y -> new Trouble.Way("" + y, instead(chosen, new Chosen(chosen.variant(), "" + y))))
        .toList();
  }

  private String instead(Chosen of, Chosen other) {
    List<Chosen> others =
        address.chosen().stream().map(c -> c.equals(of) ? other : c).distinct().toList();
    return new Address(others, address.units(), address.trip()).link(links);
  }

  private static String shortened(String text) {
    return text.length() <= ECHO ? text : text.substring(0, ECHO) + "…";
  }

  private Trouble trouble(int status, String code, List<Trouble.Way> ways, Object... arguments) {
    String key = "compare.trouble." + code;
    return new Trouble(
        status, phrases.of(key, arguments), phrases.of(key + ".advice", arguments), ways);
  }
}
