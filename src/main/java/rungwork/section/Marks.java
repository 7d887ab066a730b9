package rungwork.section;

import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Where on the walls of a section the stress is worth knowing. */
final class Marks {
  /** Steps along a flat, so small that no place between two marks is stressed by 2 % more. */
  private static final int STEPS = 6;

  private Marks() {}

  /**
   * The marks on the outside of a piece of the outer edge: seven along a flat; at a bend the two
   * corners of the tangent polygon around it. No fibre of a bend lies outside that polygon, so no
   * direction of bending is missed, and bending about y or z alone is exact.
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
    Segment inside = strip.path().aside(-half);
    Stream<Mark> within =
        inside instanceof Arc
            ? Stream.of(new Mark(part, inside.at(0.5), wall, 0.5, -1))
            : along(part, inside, wall, -1);
    return Stream.concat(outside(part, strip.path().aside(half), wall), within);
  }

  private static Stream<Mark> along(String part, Segment face, int wall, int side) {
    return IntStream.rangeClosed(0, STEPS)
        .mapToObj(
            step -> {
              double at = (double) step / STEPS;
              return new Mark(part + place(step), face.at(at), wall, at, side);
            });
  }

  private static String place(int step) {
    if (step == 0 || step == STEPS) {
      return " end";
    }
    return 2 * step == STEPS ? " middle" : "";
  }
}
