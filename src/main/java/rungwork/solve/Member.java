package rungwork.solve;

import java.util.function.UnaryOperator;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
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

  /** A count of critical loads that no frame's stiffness makes up for. */
  private static final int WITHOUT_END = 1_000_000;

  private final Beam beam;
  private final double length;
  private final BeamAxes axes;
  private final Rigidity rigidity;
  private final double torsion;
  private final double normalForce;
  private final Eccentric eccentric;
  private final double[][] compatibility;
  private final double[][] chords;
  private final Condensation condensation;

  /**
   * The element of a beam.
   *
   * @param frame the beam's frame
   * @param beam the beam
   */
  Member(Frame frame, Beam beam) {
    this.beam = beam;
    axes = BeamAxes.of(frame, beam);
    length = axes.length();
    rigidity = Rigidity.of(beam);
    torsion = rigidity.twisting();
    normalForce = 0;
    eccentric = Eccentric.none(torsion, 0);
    compatibility = byMotions(this::deformations, DEFORMATIONS);
    chords = byMotions(this::chords, 2);
    condensation = new Condensation(stiffness(), Joint.of(beam, length));
  }

  private Member(Member unloaded, double normalForce) {
    beam = unloaded.beam;
    length = unloaded.length;
    this.normalForce = normalForce;
    torsion = unloaded.torsion;
    eccentric = Eccentric.of(beam.section().properties(), torsion, normalForce);
    axes = unloaded.axes.leaning(eccentric.lean());
    rigidity = unloaded.rigidity.twisting(eccentric.twisting());
    compatibility =
        axes.lean() == unloaded.axes.lean()
            ? unloaded.compatibility
            : byMotions(this::deformations, DEFORMATIONS);
    chords = unloaded.chords;
    condensation = new Condensation(stiffness(), Joint.of(beam, length));
  }

  /**
   * The same element with a normal force in it, the same from end to end, which pushes or pulls it
   * across as soon as it bends or its chord turns.
   *
   * @param force N, tension positive [N]
   */
  Member under(double force) {
    return new Member(this, force);
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
    return axes.offset();
  }

  /** The normal force that acts across it in second order; zero in first order [N]. */
  double normalForce() {
    return normalForce;
  }

  /** The force that pushes or pulls it across in one plane in second order [N]. */
  double normalForce(Across across) {
    return across == Across.OUT_OF_PLANE ? eccentric.across() : normalForce;
  }

  /** The torque that twists the section: all of it, less what a normal force off it takes. */
  double torque(double[] state) {
    if (eccentric.lean() == 0) {
      return state[Span.T];
    }
    double slope = Across.OUT_OF_PLANE.slope(state, this);
    return torsion * (state[Span.T] / rigidity.twisting() - eccentric.lean() * slope);
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

  /** Turns of its chord about z and about y by unit motions of the nodes: 2 rows, 12 columns. */
  double[][] chordsByMotions() {
    return chords;
  }

  /**
   * Critical loads of the element, its ends stiff and its nodes held, that lie below its normal
   * force; and those that its joints add. For bending about z in plane action, about y in grillage
   * action.
   */
  int criticalLoadsBelow(Action action) {
    if (eccentric.buckled() && action != Action.FRAME) {
      return WITHOUT_END;
    }
    int clamped = 0;
    for (Across across : action.across()) {
      clamped +=
          StabilityFunctions.of(across.bending(this), length, normalForce(across)).clampedModes();
    }
    return clamped + condensation.negatives(action);
  }

  /** EA/L, GJ/L, and for bending the stability functions, 6 × 6. */
  private double[][] stiffness() {
    double[][] k = new double[DEFORMATIONS][DEFORMATIONS];
    k[0][0] = rigidity.stretching() / length;
    k[1][1] = rigidity.twisting() / length;
    for (Across across : Across.values()) {
      addBending(k, across);
    }
    return k;
  }

  private void addBending(double[][] k, Across across) {
    int first = across.firstDeformation();
    StabilityFunctions of =
        StabilityFunctions.of(across.bending(this), length, normalForce(across));
    k[first][first] = of.near();
    k[first + 1][first + 1] = of.near();
    k[first][first + 1] = of.far();
    k[first + 1][first] = of.far();
  }

  private double[][] byMotions(UnaryOperator<double[]> of, int rows) {
    double[][] result = new double[rows][MOTIONS];
    for (int motion = 0; motion < MOTIONS; motion++) {
      double[] unit = new double[MOTIONS];
      unit[motion] = 1;
      double[] values = of.apply(axes.toOwn(unit));
      for (int i = 0; i < rows; i++) {
        result[i][motion] = values[i];
      }
    }
    return result;
  }

  private double[] chords(double[] ends) {
    return new double[] {(ends[7] - ends[1]) / length, -(ends[8] - ends[2]) / length};
  }

  private double[] deformations(double[] ends) {
    double[] chords = chords(ends);
    return new double[] {
      ends[6] - ends[0],
      ends[9] - ends[3],
      ends[5] - chords[0],
      ends[11] - chords[0],
      ends[4] - chords[1],
      ends[10] - chords[1]
    };
  }

  /** How it lies in the frame. */
  BeamAxes axes() {
    return axes;
  }

  /**
   * How its own ends move when its nodes do and nothing acts between them: in its own axes, without
   * what its joints open.
   */
  double[] ownEnds(double[] nodes) {
    double[] ends = axes.toOwn(nodes);
    double[][] openings = condensation.openings(deformations(ends));
    for (int force = 0; force < 6; force++) {
      boolean turns = force > Span.T - Span.N;
      ends[force] += turns ? -openings[0][force] : openings[0][force];
      ends[6 + force] -= openings[1][force];
    }
    return ends;
  }

  /**
   * Stiffness that its nodes feel, 12 × 12 in frame axes: Bᵀ k B, and N·L for each turn of the
   * chord.
   */
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
    if (normalForce != 0) {
      for (Across across : Across.values()) {
        double[] chord = chords[across.ordinal()];
        addProduct(result, normalForce(across) * length, chord, chord);
      }
    }
    return result;
  }

  private static void addProduct(double[][] sum, double factor, double[] left, double[] right) {
    for (int i = 0; i < left.length; i++) {
      if (left[i] != 0) {
        for (int j = 0; j < right.length; j++) {
          sum[i][j] += factor * left[i] * right[j];
        }
      }
    }
  }

  /** The forces that hold its deformations at zero, as {@link HeldEnds#clamped}. */
  double[] clamped(double[] free) {
    return new HeldEnds(this).clamped(free);
  }

  /** What the nodes do to its ends, as {@link HeldEnds#forces}. */
  double[] endForces(double[] s, double[] free) {
    return new HeldEnds(this).forces(s, free);
  }

  /** Adds what the normal force does when its chord turns, as {@link HeldEnds#turnChord}. */
  void addChordForces(double[] ends, double[] chords) {
    new HeldEnds(this).turnChord(ends, chords);
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
    /** Bending in the plane of the member's x and y, or of its x and z. */
    StabilityFunctions.Bending bending(Across across) {
      return across == Across.IN_PLANE
          ? new StabilityFunctions.Bending(bendingZ, 1 / shearingY)
          : new StabilityFunctions.Bending(bendingY, 1 / shearingZ);
    }

    /** With another stiffness against twist. */
    Rigidity twisting(double other) {
      return new Rigidity(stretching, other, bendingZ, bendingY, shearingY, shearingZ);
    }

    /** EA, GJ, EIz or EIy, counted from 0. */
    double of(int which) {
      return switch (which) {
        case 0 -> stretching;
        case 1 -> twisting;
        case 2 -> bendingZ;
        default -> bendingY;
      };
    }

    static Rigidity of(Beam beam) {
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
