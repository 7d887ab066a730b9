package rungwork.check;

import java.util.List;
import rungwork.section.Section;
import rungwork.section.StressPoint;
import rungwork.solve.InternalForces;

/**
 * The stresses at a section's points as flat factors of its six forces: what {@link StressFormulas}
 * give for one force of 1 and no other, for they are linear in them. For looking at many cuts; all
 * torque twists the walls.
 */
final class StressFactors {
  private static final int EACH = 6;
  private static final List<InternalForces> UNITS =
      List.of(
          new InternalForces(1, 0, 0, 0, 0, 0),
          new InternalForces(0, 0, 0, 0, 1, 0),
          new InternalForces(0, 0, 0, 0, 0, 1));

  /** For each point normal stress by N, My and Mz, then shear stress by Vy, Vz and T. */
  private final double[] factors;

  /** The largest of each without its sign. */
  private final double[] largest = new double[EACH];

  private StressFactors(double[] factors) {
    this.factors = factors;
    for (int i = 0; i < factors.length; i++) {
      largest[i % EACH] = Math.max(largest[i % EACH], Math.abs(factors[i]));
    }
  }

  static StressFactors of(Section section) {
    List<StressPoint> points = section.points();
    double[] factors = new double[EACH * points.size()];
    for (int i = 0; i < points.size(); i++) {
      StressPoint point = points.get(i);
      for (int force = 0; force < 3; force++) {
        factors[EACH * i + force] = PointStress.normalStress(section, UNITS.get(force), point);
      }
      factors[EACH * i + 3] = StressFormulas.SHEAR_Y.value(1, 1 / point.perVy());
      factors[EACH * i + 4] = StressFormulas.SHEAR_Z.value(1, 1 / point.perVz());
      factors[EACH * i + 5] = StressFormulas.TWIST.value(1, 1 / point.perT());
    }
    return new StressFactors(factors);
  }

  /**
   * The highest equivalent stress of all points.
   *
   * @param forces holds N, Vy, Vz, T, My and Mz from {@code at} on
   * @param at where
   * @return von Mises stress [Pa]; zero of a section without stress points
   */
  double highest(double[] forces, int at) {
    double n = forces[at];
    double vy = forces[at + 1];
    double vz = forces[at + 2];
    double t = forces[at + 3];
    double my = forces[at + 4];
    double mz = forces[at + 5];
    double most = 0;
    for (int i = 0; i < factors.length; i += EACH) {
      double sigma = factors[i] * n + factors[i + 1] * my + factors[i + 2] * mz;
      double tau = factors[i + 3] * vy + factors[i + 4] * vz + factors[i + 5] * t;
      most = Math.max(most, sigma * sigma + 3 * tau * tau);
    }
    return Math.sqrt(most);
  }

  /** A bound of the shear stress under shear forces and a torque without their signs [Pa]. */
  double shearBound(double vy, double vz, double t) {
    return largest[3] * vy + largest[4] * vz + largest[5] * t;
  }

  /** Whether the equivalent stress of some point can be above a stress [Pa]: false is certain. */
  boolean canExceed(double[] forces, int at, double stress) {
    double sigma =
        largest[0] * Math.abs(forces[at])
            + largest[1] * Math.abs(forces[at + 4])
            + largest[2] * Math.abs(forces[at + 5]);
    double tau =
        largest[3] * Math.abs(forces[at + 1])
            + largest[4] * Math.abs(forces[at + 2])
            + largest[5] * Math.abs(forces[at + 3]);
    return sigma * sigma + 3 * tau * tau > stress * stress;
  }
}
