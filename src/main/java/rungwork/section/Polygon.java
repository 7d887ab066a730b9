package rungwork.section;

import java.util.List;
import java.util.stream.Stream;

/**
 * A closed path as straight pieces, to find out whether parts of a section run into each other.
 *
 * @param corners its corners, in order
 */
record Polygon(List<Spot> corners) {
  /** Straight pieces that an arc is taken as. */
  private static final int ARC = 16;

  /** Parts that touch do not overlap: walls are taken thinner by this share. */
  private static final double TOUCHING = 1e-6;

  static Polygon of(List<Segment> path) {
    return new Polygon(path.stream().flatMap(Polygon::spots).toList());
  }

  /** The edge of one wall, a trifle thinner. */
  static Polygon of(Strip strip) {
    return of(Outline.around(List.of(strip.path()), strip.thickness() * (1 - TOUCHING)));
  }

  private static Stream<Spot> spots(Segment piece) {
    int steps = piece instanceof Line ? 1 : ARC;
    return Stream.iterate(0, i -> i < steps, i -> i + 1).map(i -> piece.at((double) i / steps));
  }

  /** Larger or smaller about the origin. */
  Polygon scaled(double factor) {
    return new Polygon(corners.stream().map(corner -> corner.times(factor)).toList());
  }

  /** Whether both have a place in common inside their edges. */
  boolean overlaps(Polygon other) {
    return crosses(other) || holds(other.corners.get(0)) || other.holds(corners.get(0));
  }

  /** Whether the other lies inside it, its edge nowhere across. */
  boolean encloses(Polygon other) {
    return !crosses(other) && holds(other.corners.get(0));
  }

  private boolean crosses(Polygon other) {
    return edges().anyMatch(mine -> other.edges().anyMatch(its -> cross(mine, its)));
  }

  private Stream<Line> edges() {
    int size = corners.size();
    return Stream.iterate(0, i -> i < size, i -> i + 1)
        .map(i -> new Line(corners.get(i), corners.get((i + 1) % size)));
  }

  private static boolean cross(Line one, Line other) {
    return side(one, other.start()) * side(one, other.end()) < 0
        && side(other, one.start()) * side(other, one.end()) < 0;
  }

  /** Above zero on the left of a line, seen with y to the right and z up. */
  private static double side(Line line, Spot spot) {
    return line.end().minus(line.start()).cross(spot.minus(line.start()));
  }

  /** By counting its edges on the way from the spot to the far left (even and odd). */
  private boolean holds(Spot spot) {
    long passed =
        edges()
            .filter(edge -> edge.start().z() > spot.z() != edge.end().z() > spot.z())
            .filter(edge -> crossing(edge, spot.z()) > spot.y())
            .count();
    return passed % 2 == 1;
  }

  private static double crossing(Line edge, double z) {
    return edge.at((z - edge.start().z()) / (edge.end().z() - edge.start().z())).y();
  }
}
