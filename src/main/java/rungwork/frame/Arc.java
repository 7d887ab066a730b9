package rungwork.frame;

import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * A beam on a circular arc between two nodes, cut into straight beams of equal length whose corners
 * lie on the arc. A piece that turns by β is shorter than its arc by β²/24 of it. A quarter-circle
 * cantilever loaded out of its plane at its tip then bends too far by β²/8 and twists too little by
 * 0.68 β²: whatever share each has in its deflection, it is wrong by 0.7 β² of it at most, which is
 * 0.4 % in 20 pieces.
 *
 * @param name the pieces are named {@code name 1}, {@code name 2} …, and so are the nodes where
 *     they meet
 * @param start name of the node where it starts
 * @param end name of the node where it ends
 * @param through a place that it passes on its way
 * @param pieces how many straight beams, 2 to 1000
 */
public record Arc(String name, String start, String end, Point through, int pieces) {
  private static final int MOST_PIECES = 1000;

  /** Three places count as on one line below this part of the square of their distance [1]. */
  private static final double STRAIGHT = 1e-9;

  /** Refuses an arc of one piece, or of more than can mean anything. */
  public Arc {
    name = Guard.name("arc", name);
    if (pieces < 2 || pieces > MOST_PIECES) {
      throw new ModelException(
          "arc %s is cut into %d pieces; 2 to %d are possible"
              .formatted(name, pieces, MOST_PIECES));
    }
  }

  /** Adds the nodes and the beams to a frame. */
  void addTo(Frame.Builder frame, Plane plane, Stock stock) {
    double[] from = plane.toFrame(frame.at(start));
    double[] over = plane.toFrame(through);
    double[] to = plane.toFrame(frame.at(end));
    refuseOffPlane(over[2] - from[2]);
    double[] middle = middle(from, over, to);
    double first = Math.atan2(from[1] - middle[1], from[0] - middle[0]);
    double turn = turn(first, over, to, middle);
    double radius = Math.hypot(from[0] - middle[0], from[1] - middle[1]);
    for (int i = 1; i <= pieces; i++) {
      if (i < pieces) {
        double angle = first + turn * i / pieces;
        double[] at =
            plane.toVehicle(
                middle[0] + radius * Math.cos(angle),
                middle[1] + radius * Math.sin(angle),
                from[2]);
        frame.node(piece(i), new Point(at[0], at[1], at[2]));
      }
      frame.beam(
          Beam.rigid(piece(i), i == 1 ? start : piece(i - 1), i == pieces ? end : piece(i), stock));
    }
  }

  private void refuseOffPlane(double off) {
    if (Math.abs(off) > FrameRules.FLATNESS) {
      throw new ModelException(
          "arc %s passes a place %s out of the frame's plane"
              .formatted(name, Scale.MM.show(Math.abs(off))));
    }
  }

  private String piece(int number) {
    return name + " " + number;
  }

  /** The middle of the circle: as far from all three places. */
  private double[] middle(double[] a, double[] b, double[] c) {
    double bx = b[0] - a[0];
    double by = b[1] - a[1];
    double cx = c[0] - a[0];
    double cy = c[1] - a[1];
    double area = bx * cy - by * cx;
    double size = bx * bx + by * by + cx * cx + cy * cy;
    if (!(Math.abs(area) > STRAIGHT * size)) {
      throw new ModelException(
          "arc %s is straight: the place it passes is %s off the line from %s to %s; use a beam"
              .formatted(name, Scale.MM.show(Math.abs(area) / Math.hypot(cx, cy)), start, end));
    }
    double bb = bx * bx + by * by;
    double cc = cx * cx + cy * cy;
    return new double[] {
      a[0] + (cy * bb - by * cc) / (2 * area), a[1] + (bx * cc - cx * bb) / (2 * area)
    };
  }

  /** How far it turns, counted from its first direction, on the side of the place it passes. */
  private static double turn(double first, double[] over, double[] to, double[] middle) {
    double passing = turnTo(first, over, middle);
    double whole = turnTo(first, to, middle);
    return passing < whole ? whole : whole - 2 * Math.PI;
  }

  private static double turnTo(double first, double[] place, double[] middle) {
    double angle = Math.atan2(place[1] - middle[1], place[0] - middle[0]) - first;
    return angle < 0 ? angle + 2 * Math.PI : angle;
  }
}
