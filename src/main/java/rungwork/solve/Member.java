package rungwork.solve;

import java.util.Set;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Point;
import rungwork.frame.Release;
import rungwork.material.Elasticity;
import rungwork.section.Properties;

/**
 * A beam as an elastic element with six motions at each end, in its own axes: 0 to 2 along x, y, z,
 * 3 to 5 about them at the start, 6 to 11 the same at the end.
 *
 * <p>Bending is Euler and Bernoulli's (no shear flexibility), torsion Saint-Venant's (free to
 * warp). Stretching and the moments refer to the line of centroids, which is the node line; bending
 * out of the plane and torsion to the line of shear centres, which lies {@code offset} along y from
 * it. The two are joined by rigid arms at the ends: w = u_n + offset·φx.
 */
final class Member {
  /** Motions of both ends together. */
  static final int MOTIONS = 12;

  private final Beam beam;
  private final double length;
  private final double cosine;
  private final double sine;
  private final double offset;
  private final double stretching;
  private final double bendingY;
  private final double bendingZ;
  private final double twisting;
  private final Condensation condensation;

  /**
   * The element of a beam.
   *
   * @param frame the beam's frame
   * @param beam the beam
   */
  Member(Frame frame, Beam beam) {
    this.beam = beam;
    Point from = frame.node(beam.start()).at();
    Point to = frame.node(beam.end()).at();
    double[] run = frame.plane().toFrame(to.x() - from.x(), to.y() - from.y(), to.z() - from.z());
    length = Math.hypot(run[0], run[1]);
    cosine = run[0] / length;
    sine = run[1] / length;
    Properties section = beam.section().properties();
    Elasticity elasticity = beam.material().elasticity();
    offset = section.shearCentreY();
    stretching = elasticity.youngsModulus() * section.area();
    bendingY = elasticity.youngsModulus() * section.iy();
    bendingZ = elasticity.youngsModulus() * section.iz();
    twisting = elasticity.shearModulus() * section.it();
    condensation = new Condensation(stiffness(), released(beam));
  }

  Beam beam() {
    return beam;
  }

  /** Distance between its nodes [m]. */
  double length() {
    return length;
  }

  /** Its releases and the stiffness that they leave. */
  Condensation condensation() {
    return condensation;
  }

  /** Stiffness of the member with both ends rigidly joined, 12 × 12. */
  double[][] stiffness() {
    double[][] k = new double[MOTIONS][MOTIONS];
    addSpring(k, 0, stretching / length);
    addSpring(k, 3, twisting / length);
    addBending(k, bendingZ, 1, new int[] {1, 5, 7, 11});
    addBending(k, bendingY, -1, new int[] {2, 4, 8, 10});
    return k;
  }

  private static void addSpring(double[][] k, int motion, double stiffness) {
    k[motion][motion] = stiffness;
    k[motion + 6][motion + 6] = stiffness;
    k[motion][motion + 6] = -stiffness;
    k[motion + 6][motion] = -stiffness;
  }

  /**
   * Adds 12EI/L³, 6EI/L², 4EI/L and 2EI/L (slope-deflection; any text on matrix analysis).
   *
   * @param k the stiffness to add to
   * @param bending EI [N·m²]
   * @param turn how a turn goes with a slope: 1 as the slope, −1 against it
   * @param motions deflection and turn at the start, the same at the end
   */
  private void addBending(double[][] k, double bending, int turn, int[] motions) {
    double arm = turn * length;
    double[][] shape = {
      {12, 6 * arm, -12, 6 * arm},
      {6 * arm, 4 * arm * arm, -6 * arm, 2 * arm * arm},
      {-12, -6 * arm, 12, -6 * arm},
      {6 * arm, 2 * arm * arm, -6 * arm, 4 * arm * arm}
    };
    double scale = bending / (length * length * length);
    for (int i = 0; i < motions.length; i++) {
      for (int j = 0; j < motions.length; j++) {
        k[motions[i]][motions[j]] += scale * shape[i][j];
      }
    }
  }

  /**
   * Turns six motions or forces of a node from frame axes into the motions of this member's end.
   */
  double[] toLocal(double[] node) {
    double turnX = cosine * node[3] + sine * node[4];
    return new double[] {
      cosine * node[0] + sine * node[1],
      -sine * node[0] + cosine * node[1],
      node[2] + offset * turnX,
      turnX,
      -sine * node[3] + cosine * node[4],
      node[5]
    };
  }

  /** Stiffness that its nodes feel, releases let go, in frame axes, 12 × 12: Tᵀ k T. */
  double[][] frameStiffness() {
    double[][] t = transformation();
    double[][] k = condensation.stiffness();
    double[][] result = new double[MOTIONS][MOTIONS];
    for (int i = 0; i < MOTIONS; i++) {
      for (int j = 0; j < MOTIONS; j++) {
        result[i][j] = product(t, k, i, j);
      }
    }
    return result;
  }

  private static double product(double[][] t, double[][] k, int i, int j) {
    double sum = 0;
    for (int a = 0; a < 6; a++) {
      for (int b = 0; b < 6; b++) {
        sum += t[a][i % 6] * k[i / 6 * 6 + a][j / 6 * 6 + b] * t[b][j % 6];
      }
    }
    return sum;
  }

  /** Adds what both ends receive, 12 forces in the member's axes, to the nodes' in frame axes. */
  void addToNodes(double[] ends, double[] start, double[] end) {
    double[][] t = transformation();
    for (int i = 0; i < 6; i++) {
      for (int a = 0; a < 6; a++) {
        start[i] += t[a][i] * ends[a];
        end[i] += t[a][i] * ends[6 + a];
      }
    }
  }

  private double[][] transformation() {
    double[][] t = new double[6][6];
    for (int column = 0; column < 6; column++) {
      double[] unit = new double[6];
      unit[column] = 1;
      double[] local = toLocal(unit);
      for (int row = 0; row < 6; row++) {
        t[row][column] = local[row];
      }
    }
    return t;
  }

  /**
   * A uniform line load in the member's own terms.
   *
   * @param load along p, q, n on the line of centroids [N/m]
   * @return along x, y, z [N/m], and the torque about the line of shear centres [N·m/m]
   */
  double[] lineLoad(double[] load) {
    return new double[] {
      cosine * load[0] + sine * load[1],
      -sine * load[0] + cosine * load[1],
      load[2],
      -offset * load[2]
    };
  }

  /**
   * What the nodes do to the ends of the clamped member under a uniform line load: qL/2 and qL²/12.
   *
   * @param q as from {@link #lineLoad}
   * @return the 12 end forces
   */
  double[] clamped(double[] q) {
    double half = length / 2;
    double twelfth = length * length / 12;
    return new double[] {
      -q[0] * half, -q[1] * half, -q[2] * half, -q[3] * half, q[2] * twelfth, -q[1] * twelfth,
      -q[0] * half, -q[1] * half, -q[2] * half, -q[3] * half, -q[2] * twelfth, q[1] * twelfth
    };
  }

  /**
   * How far a point of the clamped member moves under a uniform line load, exactly.
   *
   * @param q as from {@link #lineLoad}
   * @param x from the start [m]
   * @return along x, y, z at the line of shear centres [m], about x, y, z [rad]
   */
  double[] clampedMotion(double[] q, double x) {
    double rest = length - x;
    double stretch = x * rest / 2;
    double bend = x * x * rest * rest / 24;
    double slope = x * rest * (rest - x) / 12;
    return new double[] {
      q[0] * stretch / stretching,
      q[1] * bend / bendingZ,
      q[2] * bend / bendingY,
      q[3] * stretch / twisting,
      -q[2] * slope / bendingY,
      q[1] * slope / bendingZ
    };
  }

  /** Distance of the line of shear centres from the node line along y [m]. */
  double offset() {
    return offset;
  }

  /** Turns a vector from the member's axes into frame axes. */
  double[] toFrame(double x, double y, double z) {
    return new double[] {cosine * x - sine * y, sine * x + cosine * y, z};
  }

  private static int[] released(Beam beam) {
    int[] start = motions(beam.startReleases(), 0);
    int[] end = motions(beam.endReleases(), 6);
    int[] all = new int[start.length + end.length];
    System.arraycopy(start, 0, all, 0, start.length);
    System.arraycopy(end, 0, all, start.length, end.length);
    return all;
  }

  private static int[] motions(Set<Release> releases, int first) {
    return releases.stream().sorted().mapToInt(release -> first + motion(release)).toArray();
  }

  private static int motion(Release release) {
    return switch (release) {
      case TORSION -> 3;
      case OUT_OF_PLANE_BENDING -> 4;
      case IN_PLANE_BENDING -> 5;
    };
  }
}
