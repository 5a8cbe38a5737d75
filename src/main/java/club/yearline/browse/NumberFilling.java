package club.yearline.browse;

import club.yearline.browse.FeatureChart.Area;
import club.yearline.browse.FeatureChart.Meaning;
import club.yearline.browse.FeatureChart.Part;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Values;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Steps for figures: a bar as high as the least figure possible, and hatched above it up to the
 * greatest. Heights compare the figures of one feature; they do not begin at zero.
 */
final class NumberFilling implements Filling {

  private static final double HEIGHT = 48;

  /** Share of the height that the least figure takes. */
  private static final double FLOOR = 0.4;

  private final double least;
  private final double greatest;

  NumberFilling(List<Change> changes) {
    double[] all =
        changes.stream()
            .flatMap(c -> c.offering().stream())
            .mapToDouble(NumberFilling::number)
            .sorted()
            .toArray();
    this.least = all.length == 0 ? 0 : all[0];
    this.greatest = all.length == 0 ? 0 : all[all.length - 1];
  }

  private static double number(Offered offered) {
    return Values.number(offered.value()).map(Number::doubleValue).orElse(0.0);
  }

  @Override
  public double barHeight() {
    return HEIGHT;
  }

  @Override
  public Part part(Answer answer, Frame frame) {
    double[] figures = figures(answer);
    List<Area> areas = new ArrayList<>();
    Tags tags = new Tags();
    if (figures.length == 0) {
      return new Part(frame, answer.state().code(), areas, tags.placed());
    }
    double low = share(figures[0]);
    double high = share(figures[figures.length - 1]);
    areas.add(area(frame.down(1 - low, 1), "p0"));
    if (high > low) {
      areas.add(area(frame.down(1 - high, 1 - low), "p6"));
    }
    tags.add(frame.down(1 - low, 1), text(answer));
    return new Part(frame.down(1 - high, 1), answer.state().code(), areas, tags.placed());
  }

  private static Area area(Frame frame, String fill) {
    return new Area(new Slices(frame, 1).points(0), fill, false);
  }

  private double share(double figure) {
    return greatest == least
        ? (1 + FLOOR) / 2
        : FLOOR + (1 - FLOOR) * (figure - least) / (greatest - least);
  }

  private static double[] figures(Answer answer) {
    return answer.possible().stream()
        .flatMap(p -> p.offering().stream())
        .mapToDouble(NumberFilling::number)
        .sorted()
        .toArray();
  }

  @Override
  public String below(Answer answer, Frame frame) {
    String text = text(answer);
    return text.isEmpty() || Tags.fits(text, frame) ? "" : text;
  }

  private static String text(Answer answer) {
    return answer.possible().stream()
        .flatMap(p -> p.offering().stream())
        .map(Offered::value)
        .distinct()
        .collect(Collectors.joining("/"));
  }

  @Override
  public List<Meaning> key() {
    return List.of();
  }
}
