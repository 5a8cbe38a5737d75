package club.yearline.browse;

import club.yearline.effectivity.Answer;
import java.util.List;

/** How an answer that does not split fills its rectangle of a drawing. */
interface Filling {

  /** The height that a bar needs. */
  double barHeight();

  /** The rectangle of the answer, filled. */
  FeatureChart.Part part(Answer answer, Frame frame);

  /** What could not be written inside and has to stand below; empty where nothing is missing. */
  String below(Answer answer, Frame frame);

  /** What the patterns mean. */
  List<FeatureChart.Meaning> key();
}
