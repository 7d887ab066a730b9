package rungwork.impact;

import java.util.DoubleSummaryStatistics;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.material.Elasticity;
import rungwork.section.Section;
import rungwork.section.StressPoint;
import rungwork.section.Torsion;

/**
 * A hinge of a square or rectangular tube in bending: the most moment that it carries, and how that
 * falls when the compressed flange folds in and the webs bulge out.
 *
 * <pre>
 *   ___________  a, compressed        b sin ρ: by how much an end of the fold comes in
 *  |           |                      ρ = θ/2, θ the hinge's angle
 *  |           | b, t                 h = min(a, b)/2: half of the fold's length
 *  |___________|
 * </pre>
 *
 * <p>After D. Kecman, Bending collapse of rectangular and square section tubes, Int. J. Mech. Sci.
 * 25 (1983) 623–636. The moment's three ranges are from memory and meet each other; the way of
 * folding is his, its work put together anew from memory and not compared with his figures, so it
 * counts as an estimate. His 56 tests had a/b from 0.33 to 3.0 and a/t from 9.14 to 128 (read in
 * the paper's summary).
 *
 * @param a width of the compressed flange, outside [m]
 * @param b depth, outside [m]
 * @param t wall [m]
 * @param yield fy [Pa]
 * @param elasticity of the metal
 */
record FoldingHinge(double a, double b, double t, double yield, Elasticity elasticity) {
  private static final double LEAST_ASPECT = 0.33;
  private static final double MOST_ASPECT = 3.0;
  private static final double LEAST_SLENDERNESS = 9.14;
  private static final double MOST_SLENDERNESS = 128;

  /** Sides of the section's extents that differ by less are one [m]: rounding. */
  private static final double ROUNDING = 1e-9;

  private static final double FARTHEST = Math.toRadians(40);

  /** Half the step of the work's slope [rad]. */
  private static final double STEP = 1e-5;

  /** Refuses a tube without a bore. */
  FoldingHinge {
    if (!(t > 0 && 2 * t < Math.min(a, b))) {
      throw new ModelException(
          "a tube of %s by %s has no bore with a wall of %s"
              .formatted(Scale.MM.show(a), Scale.MM.show(b), Scale.MM.show(t)));
    }
  }

  /**
   * The hinge of a section bent about its y axis.
   *
   * @param section any
   * @param yield fy [Pa]
   * @param elasticity of its metal
   * @return nothing unless it is a square or rectangular tube of one wall
   */
  static Optional<FoldingHinge> of(Section section, double yield, Elasticity elasticity) {
    boolean four = section.torsion() == Torsion.CLOSED && section.walls().size() == 4;
    if (!four || section.walls().stream().anyMatch(wall -> differs(section, wall.thickness()))) {
      return Optional.empty();
    }
    double width = extent(section, StressPoint::y);
    double depth = extent(section, StressPoint::z);
    double wall = section.walls().get(0).thickness();
    return Optional.of(new FoldingHinge(width, depth, wall, yield, elasticity));
  }

  /** From end to end [m]: a boxed channel does not lie evenly about its centre. */
  private static double extent(Section section, ToDoubleFunction<StressPoint> axis) {
    DoubleSummaryStatistics places =
        section.points().stream().mapToDouble(axis).summaryStatistics();
    return places.getMax() - places.getMin();
  }

  private static boolean differs(Section section, double thickness) {
    return Math.abs(thickness - section.walls().get(0).thickness()) > ROUNDING;
  }

  /**
   * Whether his tests cover it.
   *
   * @return true within their shapes and slendernesses
   */
  boolean tested() {
    double aspect = a / b;
    double slenderness = a / t;
    return aspect >= LEAST_ASPECT
        && aspect <= MOST_ASPECT
        && slenderness >= LEAST_SLENDERNESS
        && slenderness <= MOST_SLENDERNESS;
  }

  /** Elastic buckling stress of the flange: (5.23 + 0.16 a/b) π² E/(12 (1 − ν²)) (t/a)² [Pa]. */
  double critical() {
    double nu = elasticity.poissonsRatio();
    double plate = Math.PI * Math.PI * elasticity.youngsModulus() / (12 * (1 - nu * nu));
    return (5.23 + 0.16 * a / b) * plate * (t / a) * (t / a);
  }

  /**
   * The most moment: plastic above twice yield, between plastic and elastic above yield, of the
   * flange's effective width a (0.7 σcr/fy + 0.3) below.
   *
   * @return [N·m]
   */
  double mostMoment() {
    double ratio = critical() / yield;
    double plastic = yield * t * (a * (b - t) + 0.5 * (b - 2 * t) * (b - 2 * t));
    double elastic = yield * t * b * (a + b / 3);
    if (ratio >= 2) {
      return plastic;
    }
    if (ratio >= 1) {
      return elastic + (plastic - elastic) * (ratio - 1);
    }
    double effective = a * (0.7 * ratio + 0.3);
    return yield * t * b * b * (2 * a + b + effective * (3 * a / b + 2)) / (3 * (a + b));
  }

  /**
   * To where folding is followed: where the flange's halves touch, 2 asin((h − t/2)/b), or 40°,
   * beyond which the shrinking radius would make the moment rise again [rad].
   */
  double farthest() {
    return Math.min(FARTHEST, 2 * Math.asin((half() - t / 2) / depth()));
  }

  private double half() {
    return Math.min(flange(), depth()) / 2;
  }

  private double flange() {
    return a - t;
  }

  private double depth() {
    return b - t;
  }

  /**
   * The moment at an angle: what folding dissipates for a turn, in yield lines and by webs that
   * roll at a radius (0.07 − θ/70) h, never above the most; beyond the farthest angle what it was
   * there.
   *
   * @param angle θ, not negative [rad]
   * @return [N·m]
   */
  double moment(double angle) {
    double theta = Math.min(Math.max(angle, 2 * STEP), farthest() - 2 * STEP);
    Fold before = fold(theta - STEP);
    Fold after = fold(theta + STEP);
    Fold now = fold(theta);
    double lines = (lines(after, theta + STEP) - lines(before, theta - STEP)) / (2 * STEP);
    double rolled = (after.lip - before.lip) / (2 * STEP);
    double radius = (0.07 - theta / 70) * half();
    double rate = lines + 8.0 / 3 * rolled / radius * now.along;
    return Math.min(mostMoment(), yield * t * t / 4 * rate);
  }

  /** Yield lines across the flange, at its ends, in the webs' lips, across the tension flange. */
  private double lines(Fold fold, double theta) {
    return flange() * (2 * fold.turn + 2 * (fold.turn - theta / 2) + theta)
        + 4 * fold.lip * fold.turn;
  }

  /**
   * The shape at an angle.
   *
   * @param turn of the flange's halves [rad]
   * @param lip by which each web lies folded under the flange [m]
   * @param along the line along which the webs roll [m]
   */
  private record Fold(double turn, double lip, double along) {}

  private Fold fold(double theta) {
    double in = depth() * Math.sin(theta / 2);
    double sunk = Math.sqrt(in * (2 * half() - in));
    double height = depth() * Math.cos(theta / 2) - sunk;
    double lip = (depth() * depth() - height * height) / (2 * depth());
    return new Fold(Math.acos(1 - in / half()), lip, Math.hypot(half() - in, height));
  }

  /**
   * What the hinge takes up to an angle.
   *
   * @param angle θ [rad]
   * @return ∫ M dθ by the trapezoidal rule [J]
   */
  double energy(double angle) {
    int steps = 400;
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      sum += moment(angle * i / steps) + moment(angle * (i + 1) / steps);
    }
    return sum / 2 * angle / steps;
  }
}
