package rungwork.report;

import java.util.Collection;
import rungwork.frame.Frame;
import rungwork.frame.Node;
import rungwork.frame.Plane;
import rungwork.frame.Point;

/**
 * How places of a vehicle come onto a drawing. The front is on the left, as on the way from the
 * first station to the last.
 *
 * @param xx px to the right for a metre forward
 * @param yx px to the right for a metre to the left
 * @param yy px down for a metre to the left
 * @param zy px down for a metre up
 */
record Sight(double xx, double yx, double yy, double zy) {
  /** Seen from above. */
  static Sight plan(double scale) {
    return new Sight(-scale, 0, scale, 0);
  }

  /** Seen from the left. */
  static Sight side(double scale) {
    return new Sight(-scale, 0, 0, -scale);
  }

  /** Seen from the left and above, heights upright and lengths level, both to scale. */
  static Sight oblique(double scale) {
    return new Sight(-scale, -0.5 * scale, 0.5 * scale, -scale);
  }

  /** The view that shows a frame of this plane, at one pixel a metre. */
  static Sight of(Plane plane) {
    return switch (plane) {
      case PLAN -> oblique(1);
      case SIDE -> side(1);
      case FRONT -> new Sight(0, 1, 0, -1);
    };
  }

  /** The view that shows a frame in this width [px], but no higher than a page's half. */
  static Sight fitting(Frame frame, double width) {
    Sight one = of(frame.plane());
    Box box = one.around(frame.nodes().stream().map(Node::at).toList());
    return one.times(Math.min(width / box.width(), width / 2 / box.height()));
  }

  private Sight times(double scale) {
    return new Sight(xx * scale, yx * scale, yy * scale, zy * scale);
  }

  /** Where a place comes to lie. */
  Spot place(Point point) {
    return along(point.x(), point.y(), point.z());
  }

  /** Where an arrow of a direction points. */
  Spot along(double x, double y, double z) {
    return new Spot(xx * x + yx * y, yy * y + zy * z);
  }

  /** The room that places take. */
  Box around(Collection<Point> points) {
    Box box = Box.EMPTY;
    for (Point point : points) {
      box = box.and(place(point));
    }
    return box;
  }
}
