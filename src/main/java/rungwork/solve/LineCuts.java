package rungwork.solve;

/**
 * The internal forces along a beam under a line load that grows linearly all along, as {@link Span}
 * has them, without an object for each cut. With q and g the line load at the start and its growth
 * a metre along each axis:
 *
 * <pre>
 *   N = N₀ − qx·x − gx·x²/2                    likewise Vy, Vz and T
 *   My = My₀ + Vz₀·x − qz·x²/2 − gz·x³/6       Mz = Mz₀ − Vy₀·x + qy·x²/2 + gy·x³/6
 * </pre>
 */
final class LineCuts {
  /** Numbers of a cut: its fraction and six forces. */
  static final int CUT = 7;

  /** Most places between a beam's ends where a shear force or a line load crosses zero. */
  static final int ZEROS = 7;

  private LineCuts() {}

  /**
   * Fills in the cuts.
   *
   * @param ends what the nodes do to the beam's ends, 12 forces
   * @param line the line load, see {@link SweepLoads#LINE}
   * @param length of the beam [m]
   * @param fractions places asked for [1]
   * @param into 7 numbers for each cut, replaced
   * @return how many cuts
   */
  static int of(double[] ends, double[] line, double length, double[] fractions, double[] into) {
    int count = 0;
    for (double fraction : fractions) {
      cut(ends, line, length, fraction, into, count++);
    }
    for (int axis = 0; axis < 3; axis++) {
      double load = line[axis];
      double growth = line[4 + axis];
      if (load != 0 || growth != 0) {
        count = add(ends, line, length, -load / growth, into, count);
        if (axis > 0 && crosses(-ends[axis], load, growth, length)) {
          for (double root : BeamForces.roots(-growth / 2, -load, -ends[axis])) {
            count = add(ends, line, length, root, into, count);
          }
        }
      }
    }
    return count;
  }

  /** Whether a shear force can cross zero: it changes its sign, or turns round on its way. */
  private static boolean crosses(double shear, double load, double growth, double length) {
    double end = shear - length * (load + growth * length / 2);
    return !(shear * end > 0 && load * (load + growth * length) > 0);
  }

  private static int add(
      double[] ends, double[] line, double length, double x, double[] into, int count) {
    double fraction = x / length;
    if (fraction > 0 && fraction < 1) {
      cut(ends, line, length, fraction, into, count);
      return count + 1;
    }
    return count;
  }

  private static void cut(
      double[] ends, double[] line, double length, double fraction, double[] into, int count) {
    int at = CUT * count;
    double x = fraction * length;
    double half = x * x / 2;
    double sixth = half * x / 3;
    into[at] = fraction;
    for (int force = 0; force < 4; force++) {
      into[at + 1 + force] = -ends[force] - line[force] * x - line[4 + force] * half;
    }
    into[at + 5] = -ends[4] - ends[2] * x - line[2] * half - line[6] * sixth;
    into[at + 6] = -ends[5] + ends[1] * x + line[1] * half + line[5] * sixth;
  }
}
