package rungwork.report;

import rungwork.frame.Point;
import rungwork.frame.Wrench;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

/**
 * What acts at one place.
 *
 * @param place a node, a place on a beam or a stretch of it, in words
 * @param at where it is drawn
 * @param wrench the sum there
 */
record ActingLoad(String place, Point at, Wrench wrench) {
  ActingLoad plus(ActingLoad other) {
    return new ActingLoad(place, at, wrench.plus(other.wrench));
  }

  double force() {
    return Math.hypot(Math.hypot(wrench.fx(), wrench.fy()), wrench.fz());
  }

  double moment() {
    return Math.hypot(Math.hypot(wrench.mx(), wrench.my()), wrench.mz());
  }

  double size(Kind kind) {
    return kind == Kind.FORCE ? force() : moment();
  }

  String value(Kind kind, Units units) {
    return units.scale(kind).show(size(kind), 3);
  }
}
