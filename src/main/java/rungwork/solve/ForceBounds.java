package rungwork.solve;

import java.util.Arrays;

/**
 * Bounds of the internal forces along a beam in all load cases of a sweep at once, without a cut.
 * Between its ends a force departs from the straight line between both end values by no more than
 * what a line load q that grows by g a metre does to a beam of length L:
 *
 * <pre>
 *   N, Vy, Vz, T:  |g|·L²/8          My, Mz:  |q|·L²/8 + |g|·L³/(9·√3)
 * </pre>
 *
 * <p>(the largest of (g/2)·x·(L − x), of (q/2)·x·(L − x) and of (g/6)·x·(L² − x²)).
 */
final class ForceBounds {
  /** Compression, then N, Vy, Vz, T, My and Mz without their signs. */
  static final int EACH = 7;

  private static final double CUBIC = 1 / (9 * Math.sqrt(3));

  private final SweepLoads loads;
  private final double[] deformationForces;
  private final int width;

  /**
   * Looks at a sweep's last solve.
   *
   * @param loads its loads
   * @param deformationForces of each beam's six deformations in all cases
   */
  ForceBounds(SweepLoads loads, double[] deformationForces) {
    this.loads = loads;
    this.deformationForces = deformationForces;
    width = loads.width;
  }

  /** Takes back what was found before. */
  void clear(double[] most) {
    Arrays.fill(most, 0, EACH * width, 0);
    Arrays.fill(most, 0, width, Double.NEGATIVE_INFINITY);
  }

  /** Raises what was found up to now to what a beam of a length [m] meets. */
  void raise(int beam, double length, double[] most) {
    double[] ends = loads.ends[beam];
    double[] line = loads.lines[beam];
    double square = length * length / 8;
    double cube = CUBIC * length * length * length;
    int at = Member.DEFORMATIONS * beam * width;
    for (int c = 0; c < width; c++, at++) {
      double n = deformationForces[at];
      double t = deformationForces[at + width];
      double z1 = deformationForces[at + 2 * width];
      double z2 = deformationForces[at + 3 * width];
      double y1 = deformationForces[at + 4 * width];
      double y2 = deformationForces[at + 5 * width];
      double across = (z1 + z2) / length;
      double upright = (y1 + y2) / length;
      double growY = Math.abs(line[5 * width + c]);
      double growZ = Math.abs(line[6 * width + c]);
      double bowY = square * Math.abs(line[width + c]) + cube * growY;
      double bowZ = square * Math.abs(line[2 * width + c]) + cube * growZ;
      compression(most, c, ends, n, square * Math.abs(line[4 * width + c]));
      raise(most, c, 0, ends, -n, n, square * Math.abs(line[4 * width + c]));
      raise(most, c, 1, ends, across, -across, square * growY);
      raise(most, c, 2, ends, -upright, upright, square * growZ);
      raise(most, c, 3, ends, -t, t, square * Math.abs(line[7 * width + c]));
      raise(most, c, 4, ends, y1, y2, bowZ);
      raise(most, c, 5, ends, z1, z2, bowY);
    }
  }

  private void compression(double[] most, int c, double[] ends, double n, double bow) {
    double largest = Math.max(ends[c] - n, -ends[6 * width + c] - n);
    most[c] = Math.max(most[c], largest + bow);
  }

  /** One of the six forces, by what the deformations add to what the loads do at both ends. */
  private void raise(
      double[] most, int c, int force, double[] ends, double start, double end, double bow) {
    double atStart = Math.abs(ends[force * width + c] + start);
    double atEnd = Math.abs(ends[(force + 6) * width + c] + end);
    int to = (force + 1) * width + c;
    most[to] = Math.max(most[to], Math.max(atStart, atEnd) + bow);
  }
}
