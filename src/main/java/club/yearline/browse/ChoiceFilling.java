package club.yearline.browse;

import club.yearline.browse.FeatureChart.Area;
import club.yearline.browse.FeatureChart.Meaning;
import club.yearline.browse.FeatureChart.Part;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Possible;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A pattern for each value; bands for what was available together, slices for a transition. */
final class ChoiceFilling implements Filling {

  private static final double PLAIN = 26;
  private static final double WITH_BANDS = 40;

  private final Feature feature;
  private final Fills fills;
  private final Wording wording;
  private final boolean bands;

  ChoiceFilling(Feature feature, Fills fills, boolean bands, Wording wording) {
    this.feature = feature;
    this.fills = fills;
    this.bands = bands;
    this.wording = wording;
  }

  @Override
  public double barHeight() {
    return bands ? WITH_BANDS : PLAIN;
  }

  @Override
  public Part part(Answer answer, Frame frame) {
    Tags tags = new Tags();
    List<Area> areas =
        answer.possible().size() == 1
            ? bands(answer.possible().get(0), frame, tags)
            : slices(answer.possible(), frame, tags);
    return new Part(frame, answer.state().code(), areas, tags.placed());
  }

  /** Standard values above, options below, each in a band; an option's is half as high. */
  private List<Area> bands(Possible possible, Frame frame, Tags tags) {
    List<Offered> offering =
        possible.offering().stream().sorted(Comparator.comparing(Offered::fit)).toList();
    double total = offering.stream().mapToDouble(ChoiceFilling::weight).sum();
    List<Area> areas = new ArrayList<>();
    double from = 0;
    for (Offered offered : offering) {
      double to = from + weight(offered) / total;
      Frame band = frame.down(from, to);
      areas.add(area(new Slices(band, 1).points(0), offered));
      String letter = letter(offered);
      tags.add(band, letter + " " + wording.value(feature, offered.value()), letter);
      from = to;
    }
    return areas;
  }

  private static double weight(Offered offered) {
    return offered.fit() == Fit.STANDARD ? 1 : 0.7;
  }

  private List<Area> slices(List<Possible> possible, Frame frame, Tags tags) {
    Slices slices = new Slices(frame, Math.max(possible.size(), 1));
    List<Area> areas = new ArrayList<>();
    for (int i = 0; i < possible.size(); i++) {
      int index = i;
      possible.get(i).offering().stream()
          .min(Comparator.comparing(Offered::fit))
          .ifPresent(
              first -> {
                areas.add(area(slices.points(index), first));
                tags.add(slices.corner(index), letter(first));
              });
    }
    return areas;
  }

  private Area area(String points, Offered offered) {
    return new Area(points, fills.pattern(offered.canonicalValue()), offered.fit() == Fit.OPTION);
  }

  /** A ring before the letter stands for an option, as in the marks. */
  private String letter(Offered offered) {
    String letter = fills.letter(offered.canonicalValue());
    return offered.fit() == Fit.OPTION ? "\u25cb" + letter : letter;
  }

  @Override
  public String below(Answer answer, Frame frame) {
    return "";
  }

  @Override
  public List<Meaning> key() {
    return fills.values().stream()
        .map(v -> new Meaning(fills.pattern(v), fills.letter(v), wording.value(feature, v)))
        .toList();
  }
}
