package rungwork.impact;

import static rungwork.quantity.Quantities.si;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.quantity.Stiffness;

/**
 * Force over crush of something that is pressed together: straight between its points while it is
 * crushed farther, and back down a steep line when it is let go, so that what it absorbed stays
 * absorbed.
 *
 * <pre>
 *   F |        ____ end: the last force is held, and said
 *     |   ____/  /
 *     |  /      / unloading
 *     | /      /
 *     +-------+---- crush
 * </pre>
 *
 * @param name what the reader calls it
 * @param points from (0, 0) on, crush rising
 * @param unloading stiffness when let go [N/m], at least the steepest rise
 */
public record CrushCurve(String name, List<Point> points, double unloading) {
  private static final Scale STIFFNESS = new Scale("N/mm", 1e3);
  private static final double ROUNDING = 1e-9;

  /**
   * A corner of the curve.
   *
   * @param crush [m], from 0
   * @param force [N], not negative
   * @param label what happens there, such as {@code first yield}; empty for nothing
   */
  public record Point(double crush, double force, String label) {
    /** Refuses what is no place on a curve. */
    public Point {
      Guard.notNegative("crush of a point", crush, Scale.MM);
      Guard.notNegative("force of a point", force, Scale.KN);
    }
  }

  /** Refuses a curve that does not begin at nothing, goes back, or gives energy away. */
  public CrushCurve {
    name = Guard.name("crush curve", name);
    points = List.copyOf(points);
    refuseStart(name, points);
    for (int i = 1; i < points.size(); i++) {
      refuseStep(name, points.get(i - 1), points.get(i));
    }
    double steepest = steepest(points);
    if (!(Guard.finite("unloading stiffness of " + name, unloading) >= steepest * (1 - ROUNDING))) {
      throw new ModelException(
          "unloading stiffness %s of %s is below its steepest rise %s; it would give back more than it took"
              .formatted(STIFFNESS.show(unloading), name, STIFFNESS.show(steepest)));
    }
  }

  private static void refuseStart(String name, List<Point> points) {
    if (points.size() < 2 || points.get(0).crush() != 0 || points.get(0).force() != 0) {
      throw new ModelException(
          "crush curve " + name + " must begin at no crush and no force and have a second point");
    }
  }

  private static void refuseStep(String name, Point from, Point to) {
    if (!(to.crush() > from.crush())) {
      throw new ModelException(
          "crush curve %s goes from %s to %s; the crush of each point must lie above the one before"
              .formatted(name, Scale.MM.show(from.crush()), Scale.MM.show(to.crush())));
    }
  }

  static double steepest(List<Point> points) {
    double steepest = 0;
    for (int i = 1; i < points.size(); i++) {
      steepest = Math.max(steepest, slope(points.get(i - 1), points.get(i)));
    }
    return steepest;
  }

  private static double slope(Point from, Point to) {
    return (to.force() - from.force()) / (to.crush() - from.crush());
  }

  /**
   * A curve that begins at nothing and unloads as steeply as it first rises.
   *
   * @param name what the reader calls it
   * @return the curve's beginning, to be carried on with {@link Start#to}
   */
  public static Start named(String name) {
    return new Start(name, List.of(new Point(0, 0, "")));
  }

  /**
   * A linear spring, which gives back all it takes.
   *
   * @param name what the reader calls it
   * @param stiffness above zero
   * @param until crush at which it ends, above zero
   * @return the curve
   */
  public static CrushCurve linear(
      String name, Quantity<Stiffness> stiffness, Quantity<Length> until) {
    return linear(
        name,
        Guard.positive("stiffness of " + name, si("stiffness of " + name, stiffness), STIFFNESS),
        Guard.positive("end of " + name, si("end of " + name, until), Scale.MM));
  }

  static CrushCurve linear(String name, double stiffness, double until) {
    return new CrushCurve(
        name, List.of(new Point(0, 0, ""), new Point(until, stiffness * until, "")), stiffness);
  }

  /**
   * A curve being drawn.
   *
   * @param name what the reader calls it
   * @param points so far
   */
  public record Start(String name, List<Point> points) {
    /** Copies the points. */
    public Start {
      points = List.copyOf(points);
    }

    /**
     * Goes on to a point.
     *
     * @param crush above the last one
     * @param force there
     * @return the longer beginning
     */
    public Start to(Quantity<Length> crush, Quantity<Force> force) {
      return to(crush, force, "");
    }

    /**
     * Goes on to a point at which something happens.
     *
     * @param crush above the last one
     * @param force there
     * @param label what happens, such as {@code first yield}
     * @return the longer beginning
     */
    public Start to(Quantity<Length> crush, Quantity<Force> force, String label) {
      List<Point> longer = new ArrayList<>(points);
      longer.add(new Point(si("crush of " + name, crush), si("force of " + name, force), label));
      return new Start(name, longer);
    }

    /**
     * Ends it; it unloads as steeply as it rises at its steepest.
     *
     * @return the curve
     */
    public CrushCurve end() {
      return new CrushCurve(name, points, steepest(points));
    }

    /**
     * Ends it.
     *
     * @param unloading stiffness when let go, at least its steepest rise
     * @return the curve
     */
    public CrushCurve end(Quantity<Stiffness> unloading) {
      return new CrushCurve(name, points, si("unloading stiffness of " + name, unloading));
    }
  }

  /**
   * The force while it is crushed farther; beyond its end the last one.
   *
   * @param crush [m]
   * @return [N]; 0 below no crush
   */
  public double force(double crush) {
    for (int i = 1; i < points.size(); i++) {
      Point to = points.get(i);
      if (crush <= to.crush()) {
        Point from = points.get(i - 1);
        return Math.max(0, from.force() + slope(from, to) * (Math.max(0, crush) - from.crush()));
      }
    }
    return last().force();
  }

  /** The force at a crush after it had been crushed to some most. */
  double force(double crush, double most) {
    if (crush >= most) {
      return force(crush);
    }
    return Math.max(0, force(most) - unloading * (most - crush));
  }

  /**
   * What it has taken while it was crushed, the part that it would give back included.
   *
   * @param crush [m]
   * @return [J]
   */
  public double energy(double crush) {
    Guard.finite("crush", crush);
    double sum = 0;
    Point from = points.get(0);
    for (Point to : points.subList(1, points.size())) {
      double end = Math.min(crush, to.crush());
      if (end <= from.crush()) {
        return sum;
      }
      sum += (end - from.crush()) * (force(from.crush()) + force(end)) / 2;
      from = to;
    }
    return sum + Math.max(0, crush - last().crush()) * last().force();
  }

  /** What it holds, elastic part included, at a crush after it had been crushed to some most. */
  double energy(double crush, double most) {
    if (crush >= most) {
      return energy(crush);
    }
    double top = force(most);
    double now = force(crush, most);
    return energy(most) - (top * top - now * now) / (2 * unloading);
  }

  /** Where the curve's points end. */
  Point last() {
    return points.get(points.size() - 1);
  }

  /**
   * The highest force on it.
   *
   * @return [N]
   */
  public double peak() {
    return points.stream().mapToDouble(Point::force).max().orElseThrow();
  }

  /**
   * The same curve with all forces times a factor; its unloading too.
   *
   * @param factor above zero
   * @return the stronger or weaker curve
   */
  public CrushCurve times(double factor) {
    Guard.positive("factor on " + name, factor, Scale.NUMBER);
    List<Point> scaled =
        points.stream().map(p -> new Point(p.crush(), p.force() * factor, p.label())).toList();
    return new CrushCurve(name, scaled, unloading * factor);
  }

  /** Where the force falls, if it does. */
  Optional<String> fall() {
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).force() < points.get(i - 1).force()) {
        return Optional.of(
            "from %s to %s"
                .formatted(
                    Scale.KN.show(points.get(i - 1).force()),
                    Scale.KN.show(points.get(i).force())));
      }
    }
    return Optional.empty();
  }

  /** The crush at which a force is first reached; of a rising curve. */
  double reaching(double force) {
    for (int i = 1; i < points.size(); i++) {
      Point from = points.get(i - 1);
      Point to = points.get(i);
      if (force <= from.force()) {
        return from.crush();
      }
      if (force <= to.force()) {
        return from.crush() + (force - from.force()) / slope(from, to);
      }
    }
    return last().crush();
  }

  /** The crush at which it is passed: later than reached where the curve is level. */
  double leaving(double force) {
    double at = reaching(force);
    for (Point point : points) {
      at = point.force() <= force ? Math.max(at, point.crush()) : at;
    }
    return at;
  }

  @Override
  public String toString() {
    return name
        + ": to "
        + Scale.MM.show(last().crush(), 3)
        + ", at most "
        + Scale.KN.show(peak(), 3);
  }
}
