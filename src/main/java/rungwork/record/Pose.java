package rungwork.record;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/**
 * How a piece that stayed whole lies now.
 *
 * @param x shift forward [m]
 * @param y shift to the left [m]
 * @param turn to the left [rad]
 */
record Pose(double x, double y, double turn) {

  /** The pose that brings marks of the true frame nearest to where they are now. */
  static Pose of(MarkNet net, int[] held) {
    double x0 = mean(held, i -> net.truth(i).x());
    double y0 = mean(held, i -> net.truth(i).y());
    double x1 = mean(held, net::x);
    double y1 = mean(held, net::y);
    double cross = 0;
    double dot = 0;
    for (int i : held) {
      double a = net.truth(i).x() - x0;
      double b = net.truth(i).y() - y0;
      cross += a * (net.y(i) - y1) - b * (net.x(i) - x1);
      dot += a * (net.x(i) - x1) + b * (net.y(i) - y1);
    }
    double turn = Math.atan2(cross, dot);
    return new Pose(
        x1 - Math.cos(turn) * x0 + Math.sin(turn) * y0,
        y1 - Math.sin(turn) * x0 - Math.cos(turn) * y0,
        turn);
  }

  private static double mean(int[] marks, IntToDoubleFunction of) {
    return Arrays.stream(marks).mapToDouble(of).average().orElse(0);
  }

  /** Forward coordinate, seen from the piece, of a place [m]. */
  double ahead(double atX, double atY) {
    return Math.cos(turn) * (atX - x) + Math.sin(turn) * (atY - y);
  }

  /** Coordinate to the left, seen from the piece, of a place [m]. */
  double left(double atX, double atY) {
    return Math.cos(turn) * (atY - y) - Math.sin(turn) * (atX - x);
  }
}
