package club.yearline.groundschool;

import club.yearline.catalog.Reading;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.ProductionRun;
import club.yearline.effectivity.Timeline;
import club.yearline.effectivity.VariantModel;
import club.yearline.groundschool.WallChart.Mark;
import club.yearline.groundschool.WallChart.Row;
import club.yearline.groundschool.WallChart.Run;
import club.yearline.web.Phrases;
import club.yearline.web.YearScale;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** Draws a family's production and its changes. */
@Component
class WallCharts {

  private static final double WIDTH = 1600;
  private static final double MARGIN = 20;
  private static final double TOP = 74;
  private static final double NAME = 18;
  private static final double BAR = 9;
  private static final double LANE = 12;
  private static final double GAP = 16;
  private static final double KEY = 44;

  private final Wording wording;
  private final Phrases phrases;

  WallCharts(Wording wording, Phrases phrases) {
    this.wording = wording;
    this.phrases = phrases;
  }

  /** The drawing; empty where no variant has a year of production. */
  Optional<WallChart> draw(Family family, Reading reading, String note) {
    Catalogue catalogue = reading.catalogue();
    List<VariantModel> models =
        catalogue.variantsOf(family.key()).stream()
            .flatMap(v -> catalogue.model(v.key()).stream())
            .filter(m -> m.years().length > 0)
            .toList();
    if (models.isEmpty()) {
      return Optional.empty();
    }
    YearScale scale = scale(models);
    WallBlocks blocks = new WallBlocks(TOP, GAP);
    models.forEach(model -> blocks.add(row(model, catalogue, scale)));
    double y = blocks.bottom();
    return Optional.of(
        new WallChart(
            phrases.of("school.wall.of", family.maker(), family.name()),
            note,
            WIDTH,
            Math.ceil(y + KEY),
            y,
            scale.ticks(),
            blocks.rows()));
  }

  private static YearScale scale(List<VariantModel> models) {
    int first = models.stream().mapToInt(m -> m.years()[0]).min().orElseThrow();
    int last = models.stream().mapToInt(m -> m.years()[m.years().length - 1]).max().orElseThrow();
    return new YearScale(first, last, MARGIN, (WIDTH - 2 * MARGIN) / (last - first + 1));
  }

  private Row row(VariantModel model, Catalogue catalogue, YearScale scale) {
    List<Run> runs = model.runs().stream().map(r -> run(r, model, scale)).toList();
    String years =
        model.runs().stream()
            .map(r -> wording.years(r.firstYear(), r.lastYear()))
            .collect(Collectors.joining(", "));
    String name = phrases.of("school.wall.variant", model.variant().designation(), years);
    double x = Math.min(runs.get(0).x(), WIDTH - MARGIN - name.length() * 8.5);
    return new Row(name, 0, x, runs, marks(model, catalogue, scale));
  }

  private static Run run(ProductionRun run, VariantModel model, YearScale scale) {
    int[] years = model.years();
    int last = run.lastYear() == null ? years[years.length - 1] : run.lastYear();
    double x = scale.x(run.firstYear());
    return new Run(x, NAME, scale.x(last + 1) - x, BAR);
  }

  /** One change of the variant before it has a line. */
  private record Placed(Change change, CutIn cutIn, CutInPlace place, String text) {}

  private List<Mark> marks(VariantModel model, Catalogue catalogue, YearScale scale) {
    List<Placed> placed = new ArrayList<>();
    for (Timeline timeline : model.timelines()) {
      for (Change change : timeline.changes()) {
        CutIn cutIn = change.cutIn(model.variant().key()).orElseThrow();
        CutInPlace place = CutInPlace.of(cutIn, model, catalogue);
        if (!cutIn.atStart() && place.start().isPresent()) {
          placed.add(new Placed(change, cutIn, place, text(timeline, change)));
        }
      }
    }
    placed.sort(
        Comparator.comparingDouble((Placed p) -> p.place().start().getAsDouble())
            .thenComparing(Placed::text));
    WallLines lines = new WallLines(NAME + BAR + LANE * 0.7, LANE, WIDTH - MARGIN);
    return placed.stream().map(p -> mark(p, scale, lines)).toList();
  }

  private String text(Timeline timeline, Change change) {
    return phrases.of(
        "school.wall.change",
        timeline.feature().name(),
        wording.offering(timeline.feature(), change.offering()));
  }

  private static Mark mark(Placed placed, YearScale scale, WallLines lines) {
    double x = at(placed.place().start().getAsDouble(), scale);
    double end = placed.place().isOpen() ? x : at(placed.place().settled().getAsDouble(), scale);
    return lines.place(kind(placed), x, Math.max(0, end - x), placed.text());
  }

  private static double at(double year, YearScale scale) {
    int whole = (int) Math.floor(year);
    return scale.x(whole) + (year - whole) * scale.step();
  }

  private static String kind(Placed placed) {
    if (placed.place().isOpen()) {
      return "open";
    }
    if (!placed.place().isClean()) {
      return "window";
    }
    boolean option = placed.change().offering().stream().anyMatch(o -> o.fit() == Fit.OPTION);
    return option ? "option" : "clean";
  }
}
