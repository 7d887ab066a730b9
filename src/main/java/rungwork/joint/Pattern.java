package rungwork.joint;

import java.util.List;
import java.util.Optional;
import rungwork.check.Step;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

/**
 * Points or lines in a face that share a wrench elastically: the plate above them stays plane, so
 * that each share grows linearly with its distance from the centroid. The elastic vector method:
 * Budynas &amp; Nisbett, Shigley's Mechanical Engineering Design, 9th ed., 8-12 (bolts), 9-2 and
 * 9-4 (welds treated as a line).
 *
 * <p>Moments out of the face act about the pattern's principal axes: u the way it reaches farthest,
 * v across it. The result depends neither on the origin nor on the way the face's axes lie.
 */
final class Pattern {
  /** Below this share of the larger second moment, a pattern counts as one straight line. */
  private static final double STRAIGHT = 1e-9;

  /** A moment below this share of the whole wrench is rounding. */
  private static final double NOTHING = 1e-9;

  private final PatternFormulas formulas;
  private final Spot centroid;
  private final double size;
  private final double angle;
  private final double alongU;
  private final double alongV;

  private Pattern(PatternFormulas formulas, Sums sums) {
    this.formulas = formulas;
    size = sums.size;
    centroid = new Spot(sums.x / size, sums.y / size);
    double xx = sums.xx - size * centroid.x() * centroid.x();
    double yy = sums.yy - size * centroid.y() * centroid.y();
    double xy = sums.xy - size * centroid.x() * centroid.y();
    angle = Math.atan2(2 * xy, xx - yy) / 2;
    double radius = Math.hypot(xx - yy, 2 * xy) / 2;
    alongU = (xx + yy) / 2 + radius;
    alongV = Math.max(0, (xx + yy) / 2 - radius);
  }

  /** Bolts, each counting one. */
  static Pattern ofBolts(List<Spot> bolts) {
    Sums sums = new Sums();
    bolts.forEach(bolt -> sums.add(bolt, 1));
    return new Pattern(PatternFormulas.BOLTS, sums);
  }

  /** Straight lines from spot to spot, each counting its length. */
  static Pattern ofLines(List<Line> lines) {
    Sums sums = new Sums();
    lines.forEach(sums::add);
    return new Pattern(PatternFormulas.LINES, sums);
  }

  /** Second moment about the centroid, for moments in the face [m² of bolts, m³ of lines]. */
  double polar() {
    return alongU + alongV;
  }

  /** How much there is of it: number of bolts, or length [m]. */
  double size() {
    return size;
  }

  /** Why this pattern cannot take a load, or nothing. */
  Optional<String> cannotTake(FaceLoad load) {
    Wrench wrench = load.about(middle());
    double reach = Math.sqrt(polar() / size);
    double whole =
        reach * (Math.abs(wrench.fx()) + Math.abs(wrench.fy()) + Math.abs(wrench.fz()))
            + Math.abs(wrench.mx())
            + Math.abs(wrench.my())
            + Math.abs(wrench.mz());
    boolean tipped = Math.abs(pull(wrench, angle + Math.PI / 2)) > NOTHING * whole;
    return straight() && tipped
        ? Optional.of(
            "it stands in one straight line and cannot hold a moment about that line; how far the"
                + " plate's edge helps is not known")
        : Optional.empty();
  }

  /** The share of a load at a spot: three lines, along x, y and z. */
  List<Step> share(Spot spot, FaceLoad load) {
    Wrench wrench = load.about(middle());
    double x = spot.x() - centroid.x();
    double y = spot.y() - centroid.y();
    Step alongX = formulas.alongX().with(wrench.fx(), size, wrench.mz(), y, polar());
    Step alongY = formulas.alongY().with(wrench.fy(), size, wrench.mz(), x, polar());
    double u = x * Math.cos(angle) + y * Math.sin(angle);
    double v = y * Math.cos(angle) - x * Math.sin(angle);
    double pullU = pull(wrench, angle);
    double pullV = pull(wrench, angle + Math.PI / 2);
    Step outwards =
        straight()
            ? formulas.outOfLine().with(wrench.fz(), size, pullU, u, alongU)
            : formulas.outwards().with(wrench.fz(), size, pullU, u, alongU, pullV, v, alongV);
    return List.of(alongX, alongY, outwards);
  }

  private boolean straight() {
    return alongV < STRAIGHT * alongU;
  }

  private Point middle() {
    return new Point(centroid.x(), centroid.y(), 0);
  }

  /** The moment that pulls at what lies in a direction: the integral of share times distance. */
  private static double pull(Wrench wrench, double direction) {
    return wrench.mx() * Math.sin(direction) - wrench.my() * Math.cos(direction);
  }

  /**
   * A straight line in the face.
   *
   * @param from where it starts
   * @param to where it ends
   */
  record Line(Spot from, Spot to) {
    double length() {
      return from.distance(to);
    }

    /** The spot at a share of the way. */
    Spot at(double share) {
      return new Spot(
          from.x() + share * (to.x() - from.x()), from.y() + share * (to.y() - from.y()));
    }
  }

  /** Sums over the pattern: size, first and second moments about the face's origin. */
  private static final class Sums {
    private double size;
    private double x;
    private double y;
    private double xx;
    private double yy;
    private double xy;

    void add(Spot spot, double weight) {
      size += weight;
      x += weight * spot.x();
      y += weight * spot.y();
      xx += weight * spot.x() * spot.x();
      yy += weight * spot.y() * spot.y();
      xy += weight * spot.x() * spot.y();
    }

    /** Simpson's rule over the line: exact for second moments. */
    void add(Line line) {
      Spot middle =
          new Spot((line.from().x() + line.to().x()) / 2, (line.from().y() + line.to().y()) / 2);
      add(line.from(), line.length() / 6);
      add(middle, line.length() * 4 / 6);
      add(line.to(), line.length() / 6);
    }
  }
}
