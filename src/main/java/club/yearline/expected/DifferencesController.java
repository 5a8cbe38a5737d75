package club.yearline.expected;

import club.yearline.catalog.Links;
import club.yearline.catalog.Reading;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Question;
import club.yearline.web.Phrases;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Two variant-years side by side. */
@Controller
class DifferencesController {

  private final Wording wording;
  private final Phrases phrases;

  DifferencesController(Wording wording, Phrases phrases) {
    this.wording = wording;
    this.phrases = phrases;
  }

  /** The form's four fields; a form cannot send {@code VARIANT:YEAR} from two of its fields. */
  record Fields(
      @Nullable String fromVariant,
      @Nullable String fromYear,
      @Nullable String toVariant,
      @Nullable String toYear) {

    boolean any() {
      return fromVariant != null || fromYear != null || toVariant != null || toYear != null;
    }
  }

  @GetMapping("/differences")
  String differences(
      @RequestParam @Nullable String from,
      @RequestParam @Nullable String to,
      Fields fields,
      Reading reading,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    Links links = Links.of(reading, request);
    VariantYear first = VariantYear.of(from, fields.fromVariant(), fields.fromYear());
    VariantYear second = VariantYear.of(to, fields.toVariant(), fields.toYear());
    if (fields.any() && first != null && second != null) {
      return "redirect:"
          + reading.link(
              address(first.known(reading.catalogue()), second.known(reading.catalogue())));
    }
    form(links, VariantYear.orEmpty(first), VariantYear.orEmpty(second), model);
    if (first != null || second != null) {
      answer(links, VariantYear.orEmpty(first), VariantYear.orEmpty(second), response, model);
    }
    return "expected/differences";
  }

  private static String address(VariantYear first, VariantYear second) {
    return "/differences?from=" + first.inAddress() + "&to=" + second.inAddress();
  }

  private void form(Links links, VariantYear first, VariantYear second, Model model) {
    model.addAttribute("title", phrases.of("differences.title"));
    model.addAttribute("rev", links.reading().asked());
    model.addAttribute("first", first);
    model.addAttribute("second", second);
    model.addAttribute("menu", VariantMenu.of(links.reading().catalogue(), null));
    model.addAttribute("faults", Map.of());
    model.addAttribute("action", links.root() + "/differences");
  }

  private void answer(
      Links links,
      VariantYear first,
      VariantYear second,
      HttpServletResponse response,
      Model model) {
    Side from = side(links, first, "from", other -> address(other, second));
    Side to = side(links, second, "to", other -> address(first, other));
    if (from.position() != null && to.position() != null) {
      Pairing pairing = new Pairings(links, wording, phrases).of(from.position(), to.position());
      model.addAttribute("pairing", pairing);
      model.addAttribute("title", phrases.of("differences.of", pairing.from(), pairing.to()));
      return;
    }
    List<Trouble> troubles =
        Stream.of(from, to).map(Side::trouble).filter(Objects::nonNull).toList();
    response.setStatus(troubles.get(0).status());
    model.addAttribute("troubles", troubles);
    Map<String, String> faults = new HashMap<>();
    troubles.forEach(t -> faults.put(t.field(), t.title()));
    model.addAttribute("faults", faults);
  }

  /** One side: its position, or why there is none. */
  private record Side(@Nullable Position position, @Nullable Trouble trouble) {}

  private Side side(
      Links links, VariantYear typed, String name, Function<VariantYear, String> address) {
    Troubles troubles =
        new Troubles(
            links,
            wording,
            phrases,
            (variant, year, serial) ->
                links.at(address.apply(new VariantYear("" + variant, "" + year))));
    if (typed.asked().yearIsUnreadable()) {
      return new Side(null, troubles.yearUnreadable(typed.year()).in(name));
    }
    Catalogue catalogue = links.reading().catalogue();
    Question question = typed.question(catalogue);
    return catalogue.locate(question) instanceof Located.Found found
        ? new Side(found.position(), null)
        : new Side(null, troubles.of(catalogue.locate(question), question).in(name));
  }
}
