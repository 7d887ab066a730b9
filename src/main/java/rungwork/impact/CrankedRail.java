package rungwork.impact;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwork.solve.YieldSurface;

/**
 * A rail's kick-up under a force along the rail when motions are large: the leg turns about hinges
 * at its ends, its rise grows, and so does the force's lever; the force falls.
 *
 * <pre>
 *          head o======== F        φ: how far the leg has turned
 *              /   e cos φ + a sin φ: the lever
 *   ======== o
 *         foot                     F lever = M at the foot, or M at both ends
 *         |a |                     crush = a (1 − cos φ) + e sin φ
 * </pre>
 *
 * <p>Rigid and plastic; statics. N and M act together on the section's surface; a hinge whose walls
 * fold carries the less the farther it has turned.
 *
 * @param reach a, of the leg along the rail [m]
 * @param rise e [m], above zero
 * @param hinges 1 where the head is free to turn, 2 where it is held
 * @param surface what the section carries
 * @param folding how its moment falls, if it does
 */
record CrankedRail(
    double reach, double rise, int hinges, YieldSurface surface, Optional<FoldingHinge> folding) {
  /** To where the leg is followed: 40° [rad]. */
  private static final double FARTHEST = Math.toRadians(40);

  private static final int STEPS = 40;

  /** Force's lever at a turn [m]. */
  double lever(double turn) {
    return rise * Math.cos(turn) + reach * Math.sin(turn);
  }

  /** Shortening at a turn [m]. */
  double crush(double turn) {
    return reach * (1 - Math.cos(turn)) + rise * Math.sin(turn);
  }

  /** The least force of all faces of the surface [N]. */
  double force(double turn) {
    double slope = Math.atan2(rise, reach) + turn;
    double moment = lever(turn) / hinges / left(turn);
    double least = Double.POSITIVE_INFINITY;
    for (YieldSurface.Face face : surface.faces()) {
      double use = (-face.n() * Math.cos(slope) + face.y() * moment) / face.reach();
      if (use > 0) {
        least = Math.min(least, 1 / use);
      }
    }
    return least;
  }

  /** The part of its moment that a hinge has left at an angle [1]. */
  private double left(double turn) {
    return folding.map(hinge -> hinge.moment(turn) / hinge.mostMoment()).orElse(1.0);
  }

  /** Force over crush from the first hinge on. */
  List<Collapse.Fallen> branch() {
    List<Collapse.Fallen> points = new ArrayList<>();
    double energy = 0;
    for (int i = 0; i <= STEPS; i++) {
      double turn = FARTHEST * i / STEPS;
      double force = force(turn);
      if (i > 0) {
        Collapse.Fallen last = points.get(i - 1);
        energy += (crush(turn) - last.crush()) * (force + last.force()) / 2;
      }
      points.add(new Collapse.Fallen(turn, crush(turn), force, energy));
    }
    return points;
  }
}
