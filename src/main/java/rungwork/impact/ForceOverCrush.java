package rungwork.impact;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import rungwork.fault.Guard;
import rungwork.fault.Scale;

/**
 * The force of a collapsing frame over its crush: straight between its corners, beyond the last one
 * level or as the hinges harden.
 *
 * @param corners from nothing on
 * @param hardening what hardening hinges add beyond the last corner [N/m]
 */
record ForceOverCrush(List<Collapse.Reached> corners, double hardening) {

  /** The force at a crush [m], in [N]. */
  double force(double crush) {
    Guard.notNegative("crush", crush, Scale.MM);
    Collapse.Reached from = corners.get(0);
    for (Collapse.Reached to : corners.subList(1, corners.size())) {
      if (crush <= to.crush()) {
        double part = (crush - from.crush()) / (to.crush() - from.crush());
        return from.force() + part * (to.force() - from.force());
      }
      from = to;
    }
    return from.force() + hardening * (crush - from.crush());
  }

  /**
   * The crush at which a force [N] is first reached; that of the last corner where it is not [m].
   */
  double crushAt(double force) {
    Collapse.Reached from = corners.get(0);
    for (Collapse.Reached to : corners.subList(1, corners.size())) {
      if (to.force() >= force) {
        double part = (force - from.force()) / (to.force() - from.force());
        return from.crush() + part * (to.crush() - from.crush());
      }
      from = to;
    }
    return from.crush();
  }

  /**
   * As a curve that unloads as it first rises.
   *
   * @param name of the curve
   * @param to where it ends [m]
   * @param label what is written beside a corner
   * @return the curve
   */
  CrushCurve curve(String name, double to, Function<Collapse.Reached, String> label) {
    List<CrushCurve.Point> points = new ArrayList<>();
    for (Collapse.Reached corner : corners) {
      if (corner.crush() < to) {
        points.add(new CrushCurve.Point(corner.crush(), corner.force(), label.apply(corner)));
      }
    }
    points.add(new CrushCurve.Point(to, force(to), ""));
    return new CrushCurve(name, points, CrushCurve.steepest(points));
  }
}
