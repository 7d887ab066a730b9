package rungwork.solve;

import rungwork.frame.Beam;
import rungwork.frame.End;
import rungwork.frame.Frame;
import rungwork.frame.Point;
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
 * <p>Bending is Euler and Bernoulli's, or Timoshenko's where the beam says so; torsion is
 * Saint-Venant's (free to warp). Stretch and the moments refer to the line of centroids; bending
 * out of the plane and torsion to the line of shear centres, which lies {@code offset} along y from
 * it. The two are joined by rigid arms at the ends: w = u_n + offset·φx. Rigid arms in the plane
 * join the ends to the nodes.
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
  private final double[][] arms;
  private final Rigidity rigidity;
  private final double offset;
  private final double[][] compatibility;
  private final double[][] stiffness;
  private final Condensation condensation;

  /**
   * The element of a beam.
   *
   * @param frame the beam's frame
   * @param beam the beam
   */
  Member(Frame frame, Beam beam) {
    this.beam = beam;
    Point from = frame.startOf(beam);
    Point to = frame.endOf(beam);
    double[] run = frame.plane().toFrame(to.x() - from.x(), to.y() - from.y(), to.z() - from.z());
    length = Math.hypot(run[0], run[1]);
    cosine = run[0] / length;
    sine = run[1] / length;
    arms = new double[][] {arm(frame, beam.atStart().arm()), arm(frame, beam.atEnd().arm())};
    rigidity = Rigidity.of(beam);
    offset = beam.section().properties().shearCentreY();
    compatibility = compatibility();
    stiffness = stiffness();
    condensation = new Condensation(stiffness(), Joint.of(beam, length));
  }

  private static double[] arm(Frame frame, End.Arm arm) {
    return frame.plane().toFrame(arm.x(), arm.y(), arm.z());
  }

  Beam beam() {
    return beam;
  }

  /** Distance between its ends [m]. */
  double length() {
    return length;
  }

  /** Distance of the line of shear centres from the node line along y [m]. */
  double offset() {
    return offset;
  }

  /** EA, GJ, EIz, EIy, GAy and GAz. */
  Rigidity rigidity() {
    return rigidity;
  }

  /** Its releases and springs, and the stiffness against deformation that they leave. */
  Condensation condensation() {
    return condensation;
  }

  /** Deformations by unit motions of the nodes: 6 rows, 12 columns, motions in frame axes. */
  double[][] deformationsByMotions() {
    return compatibility;
  }

  /**
   * EA/L, GJ/L, and for bending EI/L times (4 + Φ)/(1 + Φ) and (2 − Φ)/(1 + Φ) with Φ = 12EI/(GA
   * L²), which is nothing without shear strain (slope deflection; any text on matrix analysis), 6 ×
   * 6.
   */
  private double[][] stiffness() {
    double[][] k = new double[DEFORMATIONS][DEFORMATIONS];
    k[0][0] = rigidity.stretching() / length;
    k[1][1] = rigidity.twisting() / length;
    addBending(k, 2, rigidity.bendingZ(), rigidity.shearingY());
    addBending(k, 4, rigidity.bendingY(), rigidity.shearingZ());
    return k;
  }

  private void addBending(double[][] k, int first, double bending, double shearing) {
    double phi = 12 * bending / (shearing * length * length);
    double near = (4 + phi) / (1 + phi) * bending / length;
    double far = (2 - phi) / (1 + phi) * bending / length;
    k[first][first] = near;
    k[first + 1][first + 1] = near;
    k[first][first + 1] = far;
    k[first + 1][first] = far;
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

  /** Turns the 12 motions of the nodes from frame axes into its ends', in its own axes. */
  double[] toLocal(double[] nodes) {
    double[] local = new double[MOTIONS];
    for (int i = 0; i < MOTIONS; i += 6) {
      double[] arm = arms[i / 6];
      double alongP = nodes[i] - arm[1] * nodes[i + 5];
      double alongQ = nodes[i + 1] + arm[0] * nodes[i + 5];
      double alongN = nodes[i + 2] + arm[1] * nodes[i + 3] - arm[0] * nodes[i + 4];
      double turnX = cosine * nodes[i + 3] + sine * nodes[i + 4];
      local[i] = cosine * alongP + sine * alongQ;
      local[i + 1] = -sine * alongP + cosine * alongQ;
      local[i + 2] = alongN + offset * turnX;
      local[i + 3] = turnX;
      local[i + 4] = -sine * nodes[i + 3] + cosine * nodes[i + 4];
      local[i + 5] = nodes[i + 5];
    }
    return local;
  }

  /** Turns what is done to its ends, 12 forces in its own axes, into the nodes', in frame axes. */
  double[] toFrame(double[] ends) {
    double[] nodes = new double[MOTIONS];
    for (int i = 0; i < MOTIONS; i += 6) {
      double[] arm = arms[i / 6];
      double torque = ends[i + 3] + offset * ends[i + 2];
      nodes[i] = cosine * ends[i] - sine * ends[i + 1];
      nodes[i + 1] = sine * ends[i] + cosine * ends[i + 1];
      nodes[i + 2] = ends[i + 2];
      nodes[i + 3] = cosine * torque - sine * ends[i + 4] + arm[1] * nodes[i + 2];
      nodes[i + 4] = sine * torque + cosine * ends[i + 4] - arm[0] * nodes[i + 2];
      nodes[i + 5] = ends[i + 5] + arm[0] * nodes[i + 1] - arm[1] * nodes[i];
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
   * Forces and moments in the member's own axes.
   *
   * @param load forces along p, q, n and moments about them, on the line of centroids
   * @return forces along x, y, z, the torque about the line of shear centres, moments about y, z
   */
  double[] toOwn(double[] load) {
    return new double[] {
      cosine * load[0] + sine * load[1],
      -sine * load[0] + cosine * load[1],
      load[2],
      cosine * load[3] + sine * load[4] - offset * load[2],
      -sine * load[3] + cosine * load[4],
      load[5]
    };
  }

  /**
   * The forces that hold the deformations at zero, its ends stiff: −k d₀. d₀ is how the member
   * deforms by what acts between its ends, its end free of N, T and moments and its start of
   * moments.
   *
   * @param free the state at its end when the start is at rest and free, as from {@link Span#at}
   * @return a force for each deformation
   */
  double[] clamped(double[] free) {
    double alongX = free[Span.U] - free[Span.N] * length / rigidity.stretching();
    double turnX = free[Span.TURN_X] - free[Span.T] * length / rigidity.twisting();
    // Mz = ∫−Vy and My = ∫Vz vanish at the end by these shear forces at the start.
    double shearY = free[Span.MZ] / length;
    double shearZ = -free[Span.MY] / length;
    double turnZ = free[Span.TURN_Z] - shearY * length * length / 2 / rigidity.bendingZ();
    double turnY = free[Span.TURN_Y] + shearZ * length * length / 2 / rigidity.bendingY();
    double rise = free[Span.V] + swayBy(shearY, rigidity.bendingZ(), rigidity.shearingY());
    double lift = free[Span.W] + swayBy(shearZ, rigidity.bendingY(), rigidity.shearingZ());
    double[] own = {
      alongX, turnX, -rise / length, turnZ - rise / length, lift / length, turnY + lift / length
    };
    double[] forces = new double[DEFORMATIONS];
    for (int i = 0; i < DEFORMATIONS; i++) {
      for (int j = 0; j < DEFORMATIONS; j++) {
        forces[i] -= stiffness[i][j] * own[j];
      }
    }
    return forces;
  }

  private double swayBy(double shear, double bending, double shearing) {
    return shear * length / shearing - shear * Math.pow(length, 3) / (6 * bending);
  }

  /**
   * What the nodes do to the ends, by equilibrium of the member.
   *
   * @param s a force for each deformation
   * @param free as for {@link #clamped}
   * @return 12 forces in the member's own axes; force and torque about the line of shear centres
   */
  double[] endForces(double[] s, double[] free) {
    double shearY = (free[Span.MZ] - s[2] - s[3]) / length;
    double shearZ = (s[4] + s[5] - free[Span.MY]) / length;
    return new double[] {
      free[Span.N] - s[0],
      -shearY,
      -shearZ,
      free[Span.T] - s[1],
      s[4],
      s[2],
      s[0],
      shearY + free[Span.VY],
      shearZ + free[Span.VZ],
      s[1],
      s[5],
      s[3]
    };
  }

  /**
   * What a beam opposes to deformation.
   *
   * @param stretching EA [N]
   * @param twisting GJ [N·m²]
   * @param bendingZ EIz, in plane [N·m²]
   * @param bendingY EIy, out of plane [N·m²]
   * @param shearingY GA along y, in plane [N]; without end where shear strain is left out
   * @param shearingZ GA along z, out of plane [N]; without end where shear strain is left out
   */
  record Rigidity(
      double stretching,
      double twisting,
      double bendingZ,
      double bendingY,
      double shearingY,
      double shearingZ) {
    private static Rigidity of(Beam beam) {
      Properties section = beam.section().properties();
      Elasticity elasticity = beam.material().elasticity();
      double youngs = elasticity.youngsModulus();
      double shear = elasticity.shearModulus();
      boolean rigid = beam.bending() == Beam.Bending.WITHOUT_SHEAR_STRAIN;
      return new Rigidity(
          youngs * section.area(),
          shear * section.twistConstant(),
          youngs * section.iz(),
          youngs * section.iy(),
          rigid ? Double.POSITIVE_INFINITY : shear * section.shearY(),
          rigid ? Double.POSITIVE_INFINITY : shear * section.shearZ());
    }
  }
}
