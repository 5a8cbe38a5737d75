package club.yearline.quiz;

import java.util.ArrayList;
import java.util.List;

/** Makes questions of one kind. */
interface Maker {

  /** What questions can be tried about, in the order in which they are. */
  List<Subject> subjects();

  /** The maker of a kind. */
  static Maker of(Kind kind, Ground ground, Draws draws) {
    return switch (kind) {
      case WHICH_YEAR -> new WhichYear(ground, draws);
      case WHAT_CHANGED -> new WhatChanged(ground, draws);
      case ORDER -> new Order(ground, draws);
      case ODD_ONE -> new OddOne(ground, draws);
      case SERIAL -> new OfSerial(ground, draws);
      case TRUE_OR_DOUBTFUL -> new TrueOrDoubtful(ground, draws);
    };
  }

  /** Transitions are rare, and shall not be in a quiz: every third subject is one. */
  static List<Subject> mingled(List<Subject> settled, List<Subject> transitions) {
    List<Subject> all = new ArrayList<>(settled);
    for (int i = 0; i < transitions.size(); i++) {
      all.add(Math.min(all.size(), 2 + 3 * i), transitions.get(i));
    }
    return all;
  }
}
