package rungwork.section;

import java.util.List;

/**
 * Shear flow around thin walls: in each wall q(s) = q0 − ∫(ky·y + kz·z) t ds, positive along the
 * wall's path [N/m].
 *
 * @param strips the walls, about their common centroid
 * @param starts q0 at each wall's start
 * @param slope ky and kz, how fast the normal stress grows along the beam at y = 1 and z = 1
 */
record Flow(List<Strip> strips, double[] starts, Spot slope) {
  double at(int wall, double fraction) {
    Spot moment = strips.get(wall).areaMoment(fraction);
    return starts[wall] - slope.y() * moment.y() - slope.z() * moment.z();
  }

  /** Its moment about the origin, ∫q (y dz − z dy) [N·m]. */
  double moment() {
    double sum = 0;
    for (int i = 0; i < starts.length; i++) {
      int wall = i;
      Segment path = strips.get(i).path();
      sum += path.length() * Gauss.mean(s -> at(wall, s) * path.at(s).cross(path.direction(s)));
    }
    return sum;
  }

  /** ∫τ² dA = ∫q²/t ds, twice its energy for a shear modulus of 1 on a length of 1. */
  double energy() {
    double sum = 0;
    for (int i = 0; i < starts.length; i++) {
      int wall = i;
      Strip strip = strips.get(i);
      sum += strip.path().length() / strip.thickness() * Gauss.mean(s -> Math.pow(at(wall, s), 2));
    }
    return sum;
  }
}
