package rungwork.solve;

import java.util.stream.IntStream;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Point;
import rungwork.frame.Release;
import rungwork.material.Elasticity;
import rungwork.section.Properties;

/**
 * A beam as an elastic element. Its nodes have six motions each, in frame axes; what strains it are
 * six deformations, counted as below, which no rigid motion causes. To each belongs a force.
 *
 * <pre>
 *   0 stretch    N     elongation
 *   1 twist      T     turn of the end about x against the start
 *   2, 3 bend z  Mz    turn of the start, of the end, about z against the chord
 *   4, 5 bend y  My    the same about y
 * </pre>
 *
 * <p>Bending is Euler and Bernoulli's (no shear flexibility), torsion Saint-Venant's (free to
 * warp). Stretch and the moments refer to the line of centroids, which is the node line; bending
 * out of the plane and torsion to the line of shear centres, which lies {@code offset} along y from
 * it. The two are joined by rigid arms at the ends: w = u_n + offset·φx.
 */
final class Member {
  /** Motions of both nodes together. */
  static final int MOTIONS = 12;

  /** Ways to strain it. */
  static final int DEFORMATIONS = 6;

  private final Beam beam;
  private final double length;
  private final double cosine;
  private final double sine;
  private final Rigidity rigidity;
  private final double offset;
  private final double[][] compatibility;
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
    rigidity = Rigidity.of(beam);
    offset = beam.section().properties().shearCentreY();
    compatibility = compatibility();
    condensation = new Condensation(stiffness(), released());
  }

  Beam beam() {
    return beam;
  }

  /** Distance between its nodes [m]. */
  double length() {
    return length;
  }

  /** Distance of the line of shear centres from the node line along y [m]. */
  double offset() {
    return offset;
  }

  /** EA, GJ, EIz and EIy. */
  Rigidity rigidity() {
    return rigidity;
  }

  /** Its releases, and the stiffness against deformation that they leave. */
  Condensation condensation() {
    return condensation;
  }

  /** Deformations by unit motions of the nodes: 6 rows, 12 columns, motions in frame axes. */
  double[][] deformationsByMotions() {
    return compatibility;
  }

  /** EA/L, GJ/L, 4EI/L and 2EI/L (slope deflection; any text on matrix analysis), 6 × 6. */
  private double[][] stiffness() {
    double[][] k = new double[DEFORMATIONS][DEFORMATIONS];
    k[0][0] = rigidity.stretching() / length;
    k[1][1] = rigidity.twisting() / length;
    addBending(k, 2, rigidity.bendingZ() / length);
    addBending(k, 4, rigidity.bendingY() / length);
    return k;
  }

  private static void addBending(double[][] k, int first, double perLength) {
    k[first][first] = 4 * perLength;
    k[first + 1][first + 1] = 4 * perLength;
    k[first][first + 1] = 2 * perLength;
    k[first + 1][first] = 2 * perLength;
  }

  private double[][] compatibility() {
    double[][] rows = new double[DEFORMATIONS][MOTIONS];
    for (int motion = 0; motion < MOTIONS; motion++) {
      double[] unit = new double[MOTIONS];
      unit[motion] = 1;
      double[] deformations = deformations(toLocal(unit));
      for (int i = 0; i < DEFORMATIONS; i++) {
        rows[i][motion] = deformations[i];
      }
    }
    return rows;
  }

  private double[] deformations(double[] ends) {
    double chordZ = (ends[7] - ends[1]) / length;
    double chordY = -(ends[8] - ends[2]) / length;
    return new double[] {
      ends[6] - ends[0],
      ends[9] - ends[3],
      ends[5] - chordZ,
      ends[11] - chordZ,
      ends[4] - chordY,
      ends[10] - chordY
    };
  }

  /** Turns the 12 motions of the nodes from frame axes into this member's own. */
  double[] toLocal(double[] nodes) {
    double[] local = new double[MOTIONS];
    for (int i = 0; i < MOTIONS; i += 6) {
      double turnX = cosine * nodes[i + 3] + sine * nodes[i + 4];
      local[i] = cosine * nodes[i] + sine * nodes[i + 1];
      local[i + 1] = -sine * nodes[i] + cosine * nodes[i + 1];
      local[i + 2] = nodes[i + 2] + offset * turnX;
      local[i + 3] = turnX;
      local[i + 4] = -sine * nodes[i + 3] + cosine * nodes[i + 4];
      local[i + 5] = nodes[i + 5];
    }
    return local;
  }

  /** Turns what the nodes do to the ends, 12 forces in the member's own axes, into frame axes. */
  double[] toFrame(double[] ends) {
    double[] nodes = new double[MOTIONS];
    for (int i = 0; i < MOTIONS; i += 6) {
      double torque = ends[i + 3] + offset * ends[i + 2];
      nodes[i] = cosine * ends[i] - sine * ends[i + 1];
      nodes[i + 1] = sine * ends[i] + cosine * ends[i + 1];
      nodes[i + 2] = ends[i + 2];
      nodes[i + 3] = cosine * torque - sine * ends[i + 4];
      nodes[i + 4] = sine * torque + cosine * ends[i + 4];
      nodes[i + 5] = ends[i + 5];
    }
    return nodes;
  }

  /** Turns a vector from the member's axes into frame axes. */
  double[] toFrame(double x, double y, double z) {
    return new double[] {cosine * x - sine * y, sine * x + cosine * y, z};
  }

  /** Stiffness that its nodes feel, 12 × 12 in frame axes: Bᵀ k B. */
  double[][] frameStiffness() {
    double[][] b = compatibility;
    double[][] k = condensation.stiffness();
    double[][] result = new double[MOTIONS][MOTIONS];
    for (int m = 0; m < DEFORMATIONS; m++) {
      for (int n = 0; n < DEFORMATIONS; n++) {
        if (k[m][n] != 0) {
          addProduct(result, k[m][n], b[m], b[n]);
        }
      }
    }
    return result;
  }

  private static void addProduct(double[][] sum, double factor, double[] left, double[] right) {
    for (int i = 0; i < left.length; i++) {
      for (int j = 0; j < right.length; j++) {
        sum[i][j] += factor * left[i] * right[j];
      }
    }
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
   * The forces that hold the deformations at zero under a line load: qL²/12 at clamped ends.
   *
   * @param q as from {@link #lineLoad}
   * @return a force for each deformation
   */
  double[] clamped(double[] q) {
    double twelfth = length * length / 12;
    return new double[] {
      0,
      (0.5 - torqueAtStart()) * q[3] * length,
      -q[1] * twelfth,
      q[1] * twelfth,
      q[2] * twelfth,
      -q[2] * twelfth
    };
  }

  /**
   * What the nodes do to the ends, by equilibrium of the member.
   *
   * @param s a force for each deformation
   * @param q line load as from {@link #lineLoad}
   * @return 12 forces in the member's own axes; force and torque about the line of shear centres
   */
  double[] endForces(double[] s, double[] q) {
    double half = length / 2;
    double shearY = (s[2] + s[3]) / length;
    double shearZ = -(s[4] + s[5]) / length;
    double torque = q[3] * length;
    return new double[] {
      -s[0] - q[0] * half,
      shearY - q[1] * half,
      shearZ - q[2] * half,
      -s[1] - torqueAtStart() * torque,
      s[4],
      s[2],
      s[0] - q[0] * half,
      -shearY - q[1] * half,
      -shearZ - q[2] * half,
      s[1] - (1 - torqueAtStart()) * torque,
      s[5],
      s[3]
    };
  }

  /** The part of a torque along the member that its start takes before T is added. */
  private double torqueAtStart() {
    return beam.startReleases().contains(Release.TORSION)
        ? 0
        : beam.endReleases().contains(Release.TORSION) ? 1 : 0.5;
  }

  private int[] released() {
    return IntStream.concat(
            beam.startReleases().stream().mapToInt(release -> deformation(release, 0)),
            beam.endReleases().stream().mapToInt(release -> deformation(release, 1)))
        .sorted()
        .toArray();
  }

  private static int deformation(Release release, int end) {
    return switch (release) {
      case TORSION -> 1;
      case IN_PLANE_BENDING -> 2 + end;
      case OUT_OF_PLANE_BENDING -> 4 + end;
    };
  }

  /**
   * What a beam opposes to deformation.
   *
   * @param stretching EA [N]
   * @param twisting GJ [N·m²]
   * @param bendingZ EIz, in plane [N·m²]
   * @param bendingY EIy, out of plane [N·m²]
   */
  record Rigidity(double stretching, double twisting, double bendingZ, double bendingY) {
    private static Rigidity of(Beam beam) {
      Properties section = beam.section().properties();
      Elasticity elasticity = beam.material().elasticity();
      double youngs = elasticity.youngsModulus();
      return new Rigidity(
          youngs * section.area(),
          elasticity.shearModulus() * section.it(),
          youngs * section.iz(),
          youngs * section.iy());
    }
  }
}
