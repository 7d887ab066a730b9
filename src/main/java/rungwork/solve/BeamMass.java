package rungwork.solve;

import rungwork.frame.Beam;
import rungwork.material.Elasticity;
import rungwork.section.Properties;

/**
 * The mass of one beam as its nodes feel it: the kinetic energy of the shapes that the beam takes
 * when its nodes move slowly (consistent mass; Archer 1963, from memory).
 *
 * <pre>
 *   T = ½ ∫ ρA (u̇² + v̇² + ẇ²) + ρ(Iy + Iz) φ̇² + ρIz ψ̇z² + ρIy ψ̇y²  dx
 * </pre>
 *
 * <p>u and φ are linear, v and w cubic between the ends, w measured at the line of centroids. The
 * turning of the cross-sections (last two terms) counts where the beam has shear strain
 * (Timoshenko), as the two are of one size; Euler and Bernoulli's beam has neither. Where a joint
 * gives way, the beam's end follows its own spring or nothing, not the node.
 */
final class BeamMass {
  /** Places and weights of Gauss's rule of four points, exact for the sixth power [1]. */
  private static final double[] PLACES = {
    0.0694318442029737, 0.3300094782075719, 0.6699905217924281, 0.9305681557970263
  };

  private static final double[] WEIGHTS = {
    0.1739274225687269, 0.3260725774312731, 0.3260725774312731, 0.1739274225687269
  };

  /** Motions of a cut: u, v, w, φ, ψz, ψy. */
  private static final int FIELDS = 6;

  private final Member member;
  private final double[] density;
  private final double giveZ;
  private final double giveY;

  BeamMass(Member member) {
    this.member = member;
    Beam beam = member.beam();
    Elasticity elasticity = beam.material().elasticity();
    Properties section = beam.section().properties();
    double rho = elasticity.density();
    boolean shears = beam.bending() == Beam.Bending.WITH_SHEAR_STRAIN;
    density =
        new double[] {
          rho * section.area(),
          rho * section.area(),
          rho * section.area(),
          rho * (section.iy() + section.iz()),
          shears ? rho * section.iz() : 0,
          shears ? rho * section.iy() : 0
        };
    giveZ = give(member.rigidity().bending(Across.IN_PLANE));
    giveY = give(member.rigidity().bending(Across.OUT_OF_PLANE));
  }

  /** 12 EI/(GA L²): how much of a bent beam's motion is shear strain [1]. */
  private double give(StabilityFunctions.Bending bending) {
    return 12 * bending.rigidity() * bending.give() / (member.length() * member.length());
  }

  /** 12 × 12, motions of its nodes in frame axes [kg, kg·m, kg·m²]. */
  double[][] matrix() {
    double[][] sum = new double[Member.MOTIONS][Member.MOTIONS];
    double[][] ends = new double[Member.MOTIONS][];
    for (int motion = 0; motion < Member.MOTIONS; motion++) {
      double[] unit = new double[Member.MOTIONS];
      unit[motion] = 1;
      ends[motion] = member.ownEnds(unit);
    }
    for (int point = 0; point < PLACES.length; point++) {
      add(sum, ends, PLACES[point], WEIGHTS[point] * member.length());
    }
    return sum;
  }

  private void add(double[][] sum, double[][] ends, double at, double weight) {
    double[][] cuts = new double[Member.MOTIONS][];
    for (int i = 0; i < Member.MOTIONS; i++) {
      cuts[i] = cut(ends[i], at);
    }
    for (int i = 0; i < Member.MOTIONS; i++) {
      for (int j = 0; j < Member.MOTIONS; j++) {
        for (int field = 0; field < FIELDS; field++) {
          sum[i][j] += weight * density[field] * cuts[i][field] * cuts[j][field];
        }
      }
    }
  }

  /** How the cross-section at a fraction of the length moves. */
  private double[] cut(double[] e, double at) {
    double twist = e[3] + at * (e[9] - e[3]);
    double[] inPlane = bent(e[1], e[5], e[7], e[11], at, giveZ);
    double[] outOfPlane = bent(e[2], -e[4], e[8], -e[10], at, giveY);
    double w = outOfPlane[0] - member.offset() * twist;
    return new double[] {
      e[0] + at * (e[6] - e[0]), inPlane[0], w, twist, inPlane[1], outOfPlane[1]
    };
  }

  /**
   * Deflection and turn of a bent beam between its ends; with shear strain after Przemieniecki,
   * Theory of Matrix Structural Analysis (1968), from memory.
   */
  private double[] bent(double v1, double t1, double v2, double t2, double s, double give) {
    double length = member.length();
    double k = 1 / (1 + give);
    double r = 1 - s;
    double deflection =
        k
            * (v1 * (1 - 3 * s * s + 2 * s * s * s + give * r)
                + t1 * length * (s * r * r + give * s * r / 2)
                + v2 * (3 * s * s - 2 * s * s * s + give * s)
                - t2 * length * (s * s * r + give * s * r / 2));
    double turn =
        k
            * (6 * s * r * (v2 - v1) / length
                + t1 * (1 - 4 * s + 3 * s * s + give * r)
                + t2 * (3 * s * s - 2 * s + give * s));
    return new double[] {deflection, turn};
  }
}
