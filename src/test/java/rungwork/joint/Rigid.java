package rungwork.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

/**
 * A move of a whole joint with its load: turned in its face, then shifted.
 *
 * @param angle by which it is turned [rad]
 * @param dx shift along x [m]
 * @param dy shift along y [m]
 */
record Rigid(double angle, double dx, double dy) {
  static Rigid of(Random random) {
    return new Rigid(6 * random.nextDouble(), random.nextDouble(), random.nextDouble());
  }

  static Wrench wrench(Random random) {
    return new Wrench(
        4000 * random.nextGaussian(),
        4000 * random.nextGaussian(),
        4000 * random.nextGaussian(),
        100 * random.nextGaussian(),
        100 * random.nextGaussian(),
        100 * random.nextGaussian());
  }

  static Point point(Random random) {
    return new Point(
        0.1 * random.nextGaussian(), 0.1 * random.nextGaussian(), 0.1 * random.nextGaussian());
  }

  /** Spots at least 20 mm apart. */
  static List<Spot> spots(Random random, int count) {
    List<Spot> spots = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      spots.add(new Spot(0.04 * i + 0.01 * random.nextDouble(), 0.15 * random.nextDouble()));
    }
    return spots;
  }

  Spot moved(Spot spot) {
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    return new Spot(cos * spot.x() - sin * spot.y() + dx, sin * spot.x() + cos * spot.y() + dy);
  }

  Point moved(Point point) {
    Spot spot = moved(new Spot(point.x(), point.y()));
    return new Point(spot.x(), spot.y(), point.z());
  }

  Wrench turned(Wrench wrench) {
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    return new Wrench(
        cos * wrench.fx() - sin * wrench.fy(),
        sin * wrench.fx() + cos * wrench.fy(),
        wrench.fz(),
        cos * wrench.mx() - sin * wrench.my(),
        sin * wrench.mx() + cos * wrench.my(),
        wrench.mz());
  }
}
