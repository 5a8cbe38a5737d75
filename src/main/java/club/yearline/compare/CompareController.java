package club.yearline.compare;

import club.yearline.catalog.Links;
import club.yearline.catalog.Reading;
import club.yearline.catalog.Wording;
import club.yearline.web.Phrases;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Variants compared by their figures, and judged by a trip. */
@Controller
class CompareController {

  private static final int BAD_REQUEST = 400;

  private final Wording wording;
  private final Phrases phrases;

  CompareController(Wording wording, Phrases phrases) {
    this.wording = wording;
    this.phrases = phrases;
  }

  @GetMapping("/compare")
  String compare(
      TripForm form,
      @RequestParam(defaultValue = "") String units,
      Reading reading,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    Links links = Links.of(reading, request);
    boolean sent = request.getParameterValues("variant") != null;
    Address address = new Address(chosen(request, reading), UnitSystem.of(units), form);
    if (sent) {
      return "redirect:" + reading.link(address.path());
    }
    Choosing choosing = new Choosing(links, wording, phrases, address);
    TripReader reader = new TripReader(form, phrases);
    Answering answering = new Answering(links, choosing.columns(), reader);
    model.addAttribute("title", phrases.of("compare.title"));
    model.addAttribute("rev", reading.asked());
    model.addAttribute("ask", Ask.of(links, phrases, address));
    answer(answering, address, model);
    model.addAttribute("troubles", choosing.troubles());
    model.addAttribute("faults", reader.faults());
    boolean faulty = !choosing.troubles().isEmpty() || !reader.faults().isEmpty();
    boolean answered = Stream.of("comparison", "suits", "field").anyMatch(model::containsAttribute);
    model.addAttribute("answered", answered);
    model.addAttribute("fresh", !answered && !faulty);
    model.addAttribute("open", !answered || faulty || choosing.columns().size() == 1);
    status(choosing.troubles(), reader).ifPresent(response::setStatus);
    return "compare/compare";
  }

  /** What one request is answered from, once its trip was read. */
  private record Answering(
      Links links,
      List<Column> columns,
      Amount reserve,
      Optional<Trip> trip,
      Optional<Field> field) {

    Answering(Links links, List<Column> columns, TripReader reader) {
      this(links, columns, reader.reserve(), reader.trip(), reader.field());
    }
  }

  private static Optional<Integer> status(List<Trouble> troubles, TripReader reader) {
    return troubles.isEmpty()
        ? Optional.of(BAD_REQUEST).filter(s -> !reader.faults().isEmpty())
        : Optional.of(troubles.get(0).status());
  }

  /** From the address, or from the two fields of each row of the form, which come in pairs. */
  private static List<Chosen> chosen(HttpServletRequest request, Reading reading) {
    Stream<Chosen> all =
        Stream.concat(values(request, "v").stream().map(Chosen::of), pairs(request).stream());
    return all.filter(c -> !c.isEmpty()).map(c -> c.known(reading.catalogue())).distinct().toList();
  }

  private static List<Chosen> pairs(HttpServletRequest request) {
    List<String> variants = values(request, "variant");
    List<String> years = values(request, "year");
    List<Chosen> pairs = new ArrayList<>();
    for (int i = 0; i < variants.size(); i++) {
      String year = i < years.size() ? years.get(i).strip() : "";
      pairs.add(new Chosen(variants.get(i).strip(), year));
    }
    return pairs;
  }

  private static List<String> values(HttpServletRequest request, String name) {
    String[] values = request.getParameterValues(name);
    return values == null ? List.of() : List.of(values);
  }

  private void answer(Answering answering, Address address, Model model) {
    List<Column> columns = answering.columns();
    Told told = new Told(address.units(), columns, phrases);
    Words words = new Words(answering.links().reading().catalogue(), phrases);
    Trip trip = answering.trip().orElse(null);
    answering.field().ifPresent(f -> model.addAttribute("field", FieldView.of(f, told, phrases)));
    if (trip != null) {
      model.addAttribute("tripText", new TripText(phrases, told).of(trip));
      model.addAttribute(
          "suits", Suits.of(answering.links(), wording, phrases, told, address, trip));
    }
    if (!columns.isEmpty()) {
      sideBySide(answering, told, words, trip, address, model);
    }
  }

  private void sideBySide(
      Answering answering,
      Told told,
      Words words,
      @Nullable Trip trip,
      Address address,
      Model model) {
    List<Column> columns = answering.columns();
    Amount reserve = answering.reserve();
    Comparison comparison =
        new Comparisons(answering.links(), wording, phrases, told, columns, reserve).of(address);
    Plots plots = new Plots(phrases, words, told, reserve, columns);
    model.addAttribute("comparison", comparison);
    model.addAttribute("title", heading(comparison));
    model.addAttribute("alone", columns.size() == 1);
    model.addAttribute("plots", plots.bars());
    model.addAttribute("scatter", plots.scatter().orElse(null));
    model.addAttribute("acrossText", plots.axis(Derived.PAYLOAD_FULL_FUEL));
    model.addAttribute("upwardText", plots.axis(Derived.RANGE));
    model.addAttribute("reserveText", TripText.minutes(reserve));
    Sums sums = new Sums(phrases, words, told, reserve, trip);
    model.addAttribute("sums", columns.stream().map(sums::of).toList());
    if (trip != null) {
      model.addAttribute("verdicts", verdicts(columns, trip, told, words));
    }
  }

  private List<Judged> verdicts(List<Column> columns, Trip trip, Told told, Words words) {
    Verdicts verdicts = new Verdicts(phrases, words, told);
    return columns.stream()
        .map(
            c ->
                verdicts.whole(
                    words.name(c.position()),
                    null,
                    c.builds().stream().map(b -> new Flight(b, trip)).toList()))
        .toList();
  }

  private String heading(Comparison comparison) {
    List<String> names = comparison.heads().stream().map(Comparison.Head::name).toList();
    int last = names.size() - 1;
    return last == 0
        ? names.get(0)
        : phrases.of(
            "compare.and-last",
            String.join(phrases.of("compare.comma"), names.subList(0, last)),
            names.get(last));
  }
}
