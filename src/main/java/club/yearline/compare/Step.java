package club.yearline.compare;

import java.util.List;

/**
 * One line of arithmetic.
 *
 * @param name what it finds, the end of a message's key
 * @param terms what it is worked out from, in order
 * @param result what comes out
 */
record Step(String name, List<Term> terms, Interval result) {

  Step {
    terms = List.copyOf(terms);
  }

  /**
   * A number in a line of arithmetic.
   *
   * @param sign what is done with it; empty for the first
   * @param name what it is, the end of a message's key
   * @param value the number
   */
  record Term(String sign, String name, Interval value) {

    static Term first(String name, Interval value) {
      return new Term("", name, value);
    }

    static Term plus(String name, Interval value) {
      return new Term("+", name, value);
    }

    static Term minus(String name, Interval value) {
      return new Term("−", name, value);
    }

    static Term times(String name, Interval value) {
      return new Term("×", name, value);
    }

    static Term over(String name, Interval value) {
      return new Term("÷", name, value);
    }
  }
}
