package rungwork.section;

import java.util.ArrayList;
import java.util.List;

/** Draws a path of straight and bent pieces, each carrying on where the last one ended. */
final class Pen {
  /** Shorter pieces are rounding and left out [m]. */
  static final double NOTHING = 1e-9;

  private final List<Segment> path = new ArrayList<>();
  private Spot at;
  private double heading;

  private Pen(Spot at, double heading) {
    this.at = at;
    this.heading = heading;
  }

  /**
   * Puts the pen down.
   *
   * @param at where
   * @param heading in which direction, from y towards z [degrees]
   * @return the pen
   */
  static Pen at(Spot at, double heading) {
    return new Pen(at, Math.toRadians(heading));
  }

  /** Draws a straight piece of a length [m]. */
  Pen forward(double length) {
    Spot end = at.plus(Spot.polar(length, heading));
    if (length > NOTHING) {
      path.add(new Line(at, end));
    }
    at = end;
    return this;
  }

  /** Draws a bend of a radius [m] through an angle, positive from y towards z [degrees]. */
  Pen bend(double radius, double degrees) {
    double angle = Math.toRadians(degrees);
    double side = Math.signum(angle) * Math.PI / 2;
    Spot centre = at.plus(Spot.polar(radius, heading + side));
    if (radius > NOTHING) {
      path.add(new Arc(centre, radius, heading - side, angle));
    }
    at = centre.plus(Spot.polar(radius, heading - side + angle));
    heading += angle;
    return this;
  }

  /** Turns on the spot, positive from y towards z [degrees]. */
  Pen turn(double degrees) {
    heading += Math.toRadians(degrees);
    return this;
  }

  List<Segment> path() {
    return List.copyOf(path);
  }

  /** A rectangle about the origin with rounded corners, run through from y towards z. */
  static List<Segment> roundedRectangle(double height, double width, double radius) {
    double across = width - 2 * radius;
    double up = height - 2 * radius;
    return at(new Spot(width / 2, -up / 2), 90)
        .forward(up)
        .bend(radius, 90)
        .forward(across)
        .bend(radius, 90)
        .forward(up)
        .bend(radius, 90)
        .forward(across)
        .bend(radius, 90)
        .path();
  }
}
