package club.yearline.compare;

import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The arithmetic of a variant-year, line by line. */
final class Sums {

  private final Phrases phrases;
  private final Words words;
  private final Told told;
  private final Amount reserve;
  private final @Nullable Trip trip;

  Sums(Phrases phrases, Words words, Told told, Amount reserve, @Nullable Trip trip) {
    this.phrases = phrases;
    this.words = words;
    this.told = told;
    this.reserve = reserve;
    this.trip = trip;
  }

  /**
   * All lines of a variant-year.
   *
   * @param name the variant-year
   * @param parts the lines of each stretch of serials
   */
  public record Sheet(String name, List<Part> parts) {}

  /**
   * The lines of one stretch of serials.
   *
   * @param serials the stretch; null where the year does not split
   * @param lines the lines
   * @param lacking what could not be worked out, and for lack of what
   */
  public record Part(@Nullable String serials, List<Line> lines, List<String> lacking) {}

  /**
   * A line.
   *
   * @param name what it finds
   * @param terms what it is worked out from
   * @param result what comes out
   */
  public record Line(String name, String terms, String result) {}

  Sheet of(Column column) {
    return new Sheet(
        words.name(column.position()), column.builds().stream().map(this::part).toList());
  }

  private Part part(Build build) {
    Map<String, Line> lines = new LinkedHashMap<>();
    List<String> lacking = new ArrayList<>();
    Arithmetic arithmetic = new Arithmetic(build, reserve);
    for (Derived derived : Derived.ALL) {
      add(words.heading(derived), arithmetic.of(derived), lines, lacking);
    }
    if (trip != null) {
      Flight flight = new Flight(build, trip);
      add(phrases.of("compare.heading.fuel"), flight.fuel(), lines, lacking);
      add(phrases.of("compare.heading.left"), flight.left(), lines, lacking);
    }
    Build.Serials serials = build.serials();
    return new Part(
        serials == null ? null : words.serials(serials), List.copyOf(lines.values()), lacking);
  }

  private void add(String heading, Worked worked, Map<String, Line> lines, List<String> lacking) {
    worked.steps().forEach(s -> lines.putIfAbsent(s.name(), line(s)));
    if (worked.found().isEmpty()) {
      lacking.add(phrases.of("compare.lacking", heading, words.without(worked.missing())));
    }
  }

  private Line line(Step step) {
    return new Line(
        words.term(step.name()),
        step.terms().stream().map(this::term).collect(Collectors.joining(" ")),
        told.carried(step.result()));
  }

  private String term(Step.Term term) {
    boolean density = term.name().equals("fuel-density");
    boolean recorded =
        Figure.of(term.name()).isPresent() || density && told.scale(Scale.LB_GAL) == Scale.LB_GAL;
    String value = recorded ? told.text(term.value()) : told.carried(term.value());
    String named = phrases.of("compare.named", words.term(term.name()), value);
    return term.sign().isEmpty() ? named : term.sign() + " " + named;
  }
}
