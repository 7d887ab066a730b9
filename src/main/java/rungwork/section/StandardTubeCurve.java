package rungwork.section;

import java.util.function.ToDoubleFunction;
import rungwork.fault.ModelException;

/**
 * What standards leave of a tube's plastic moment beside an axial force, as {@link
 * Outline.Moduli#byStandard} says.
 *
 * @param section the tube
 */
record StandardTubeCurve(Section section) {
  StandardTubeCurve {
    if (section.torsion() != Torsion.CLOSED) {
      throw new ModelException(
          "section "
              + section.name()
              + " is no tube; the standard's curve is for rectangular and round tubes");
    }
  }

  /** The part of the plastic moment that is left by a share of the force at yield [1]. */
  double left(double axis, double share) {
    double n = Math.abs(share);
    if (section.walls().stream().anyMatch(wall -> wall.edge() == Wall.Edge.ROUND)) {
      return 1 - Math.pow(n, 1.7);
    }
    double webs = Math.min(0.5, 1 - flanges(axis) / section.properties().area());
    return Math.min(1, (1 - n) / (1 - 0.5 * webs));
  }

  /** 2·b·t: whole width of the walls along the axis times their thickness. */
  private double flanges(double axis) {
    boolean aboutY = Math.abs(Math.cos(axis)) > Math.abs(Math.sin(axis));
    ToDoubleFunction<Spot> along = aboutY ? Spot::y : Spot::z;
    Outline outline = section.outline();
    double width = outline.furthest(along) + outline.furthest(spot -> -along.applyAsDouble(spot));
    return section.walls().stream()
        .filter(wall -> isAlong(wall, along))
        .mapToDouble(wall -> width * wall.thickness())
        .sum();
  }

  private static boolean isAlong(Wall wall, ToDoubleFunction<Spot> coordinate) {
    Spot run = wall.to().minus(wall.from());
    return Math.abs(coordinate.applyAsDouble(run)) > run.size() / 2;
  }
}
