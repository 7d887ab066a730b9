package rungwork.solve;

import java.util.Arrays;
import java.util.TreeSet;

/**
 * All that acts between the ends of one member, in its own axes: loads as {@link Term}s, and the
 * strain that it would take by itself if nothing held it (warmth, lack of fit). Immutable.
 *
 * <p>A state of a cut is its six motions and six internal forces. With nothing at the start, a
 * state is what the terms left of the cut add up to (method of initial parameters; Pestel and
 * Leckie, Matrix Methods in Elastomechanics, 1963, from memory).
 */
final class Span {
  /** Places in a state: motions of the line of centroids along x and of shear centres across. */
  static final int U = 0;

  static final int V = 1;
  static final int W = 2;

  /** Turns of the cross-section. */
  static final int TURN_X = 3;

  static final int TURN_Y = 4;
  static final int TURN_Z = 5;

  /** Internal forces. */
  static final int N = 6;

  static final int VY = 7;
  static final int VZ = 8;
  static final int T = 9;
  static final int MY = 10;
  static final int MZ = 11;

  /** Values of a state. */
  static final int STATE = 12;

  /** A member with nothing on it. */
  static final Span EMPTY = new Span(new Term[0], new double[4]);

  private final Term[] terms;
  private final double[] strain;

  private Span(Term[] terms, double[] strain) {
    this.terms = terms;
    this.strain = strain;
  }

  /** Whether nothing acts. */
  boolean isEmpty() {
    return terms.length == 0 && Arrays.stream(strain).allMatch(value -> value == 0);
  }

  /** With one more term. */
  Span plus(Term term) {
    Term[] more = Arrays.copyOf(terms, terms.length + 1);
    more[terms.length] = term;
    return new Span(more, strain);
  }

  /**
   * With a line load along a part.
   *
   * @param from first end of the part, as a fraction of the length [1]
   * @param to its other end [1]
   * @param loads along x, y, z and about x, per metre, at the first and at the other end
   * @param length of the member [m]
   */
  Span plus(double from, double to, double[][] loads, double length) {
    double[] growth = new double[6];
    double[] gone = new double[6];
    for (int i = 0; i < 4; i++) {
      growth[i] = (loads[1][i] - loads[0][i]) / ((to - from) * length);
      gone[i] = -loads[1][i];
    }
    Span span = plus(new Term(from, 1, Arrays.copyOf(loads[0], 6)));
    boolean grows = Arrays.stream(growth).anyMatch(value -> value != 0);
    if (grows) {
      span = span.plus(new Term(from, 2, growth));
    }
    if (to < 1) {
      span = span.plus(new Term(to, 1, gone));
      span = grows ? span.plus(new Term(to, 2, negative(growth))) : span;
    }
    return span;
  }

  private static double[] negative(double[] values) {
    return Arrays.stream(values).map(value -> -value).toArray();
  }

  /**
   * With a strain of its own.
   *
   * @param more stretch [1], twist [rad/m], curvature about y and about z [1/m]
   */
  Span strained(double[] more) {
    double[] sum = strain.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += more[i];
    }
    return new Span(terms, sum);
  }

  /** With what a node does to the start: like a load there. */
  Span startingWith(double[] ends) {
    return plus(new Term(0, 0, ends));
  }

  /** The state at a fraction of the length, the start at rest and without force. */
  double[] at(double fraction, Member member) {
    double[] state = forcesAt(fraction, member.length());
    double x = fraction * member.length();
    state[U] = strain[0] * x;
    state[TURN_X] = strain[1] * x;
    state[TURN_Y] = strain[2] * x;
    state[TURN_Z] = strain[3] * x;
    state[V] = strain[3] * x * x / 2;
    state[W] = -strain[2] * x * x / 2;
    for (Term term : terms) {
      term.addMotions(state, fraction, member);
    }
    if (member.normalForce() != 0) {
      bend(state, fraction, member);
    }
    return state;
  }

  /** The curvature that it would take by itself in one plane [1/m]. */
  double curvature(Across across) {
    return across == Across.IN_PLANE ? strain[3] : strain[2];
  }

  /** Replaces deflections, turns and moments by those under the member's normal force. */
  private void bend(double[] state, double fraction, Member member) {
    for (Across across : Across.values()) {
      across.clear(state);
    }
    double x = fraction * member.length();
    Across.OUT_OF_PLANE.addCurvature(state, strain[2], x, member);
    Across.IN_PLANE.addCurvature(state, strain[3], x, member);
    for (Term term : terms) {
      term.addAcross(state, fraction, member);
    }
  }

  /** A state's forces alone; its motions are left at nothing. */
  double[] forcesAt(double fraction, double length) {
    double[] state = new double[STATE];
    for (Term term : terms) {
      term.addForces(state, fraction, length);
    }
    return state;
  }

  /** The mean normal force along a part of the member, forces at its start included [N]. */
  double meanNormalForce(double from, double to, Member member) {
    double length = (to - from) * member.length();
    double stretch = at(to, member)[U] - at(from, member)[U] - strain[0] * length;
    return member.rigidity().stretching() * stretch / length;
  }

  /** Places strictly between the ends where a load begins, ends or acts, in rising order. */
  double[] breaks() {
    return Arrays.stream(terms)
        .mapToDouble(Term::from)
        .filter(from -> from > 0 && from < 1)
        .sorted()
        .distinct()
        .toArray();
  }

  /** Places where point loads act, the start and the end included, in rising order. */
  TreeSet<Double> jumps() {
    TreeSet<Double> jumps = new TreeSet<>();
    for (Term term : terms) {
      if (term.order() == 0) {
        jumps.add(term.from());
      }
    }
    return jumps;
  }

  /** The load per metre along an axis, 0 to 3, just beyond a fraction of the length. */
  double perMetre(int axis, double fraction, double length) {
    double sum = 0;
    for (Term term : terms) {
      sum += term.perMetre(axis, fraction, length);
    }
    return sum;
  }

  /**
   * The line load of a member that has no other load between its ends: along x, y, z and about x at
   * its start, then how much each grows a metre. Not a number where it is not one line all along.
   */
  double[] line(double length) {
    double[] line = new double[SweepLoads.LINE];
    boolean whole = Arrays.stream(terms).allMatch(term -> term.from() == 0 && term.order() > 0);
    for (int axis = 0; axis < 4; axis++) {
      line[axis] = whole ? perMetre(axis, 0, length) : Double.NaN;
      line[4 + axis] = whole ? growth(axis, 0) : Double.NaN;
    }
    return line;
  }

  /** How much that load grows each metre. */
  double growth(int axis, double fraction) {
    double sum = 0;
    for (Term term : terms) {
      sum += term.growth(axis, fraction);
    }
    return sum;
  }
}
