package rungwork.section;

import java.util.stream.Stream;

/** Where on the walls of a section the stress is worth knowing. */
final class Marks {
  private Marks() {}

  /**
   * The marks on the outside of a piece of the outer edge: both ends and the middle of a flat; at a
   * bend the two corners of the tangent polygon around it. No fibre of a bend lies outside that
   * polygon, so no direction of bending is missed, and bending about y or z alone is exact.
   *
   * @param part what the piece is, such as {@code flange}
   * @param edge the piece of the outer edge
   * @param wall the number of the wall under it
   * @return its marks
   */
  static Stream<Mark> outside(String part, Segment edge, int wall) {
    if (edge instanceof Arc arc) {
      double radius = arc.radius() / Math.cos(arc.angle() / 4);
      Arc polygon = new Arc(arc.centre(), radius, arc.from(), arc.angle());
      return Stream.of(0.25, 0.75).map(at -> new Mark(part, polygon.at(at), wall, at, 1));
    }
    return along(part, edge, wall, 1);
  }

  /**
   * The marks on both faces of an open wall, in which Saint-Venant's stress changes its sign from
   * face to face.
   *
   * @param part what the wall is, such as {@code flange}
   * @param strip the wall
   * @param wall its number
   * @return its marks
   */
  static Stream<Mark> bothFaces(String part, Strip strip, int wall) {
    double half = strip.thickness() / 2;
    return Stream.concat(
        outside(part, strip.path().aside(half), wall),
        along(part, strip.path().aside(-half), wall, -1));
  }

  private static Stream<Mark> along(String part, Segment face, int wall, int side) {
    return Stream.of(0.0, 0.5, 1.0)
        .map(at -> new Mark(name(part, at), face.at(at), wall, at, side));
  }

  private static String name(String part, double fraction) {
    return fraction == 0.5 ? part + " middle" : part + " end";
  }
}
