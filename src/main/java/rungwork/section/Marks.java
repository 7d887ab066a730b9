package rungwork.section;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Where on the walls of a section the stress is worth knowing: so close that no place between is
 * stressed by 2 % more.
 */
final class Marks {
  /** Marks along a flat, each in the middle of its part: odd, so that one is in the very middle. */
  private static final int PARTS = 5;

  private Marks() {}

  /**
   * The marks on the outside of a piece of the outer edge: some along a flat; at a bend the two
   * corners of the tangent polygon around it. No fibre of a bend lies outside that polygon, so no
   * direction of bending is missed, and bending about y or z alone is exact.
   *
   * @param part what the piece is, such as {@code flange}
   * @param edge the piece of the outer edge
   * @param wall the number of the wall under it
   * @return its marks
   */
  static Stream<Mark> outside(String part, Segment edge, int wall) {
    return edge instanceof Arc arc ? around(part, arc, wall, 1) : along(part, edge, wall, 1);
  }

  private static Stream<Mark> around(String part, Arc arc, int wall, int side) {
    double radius = arc.radius() / Math.cos(arc.angle() / 4);
    Arc polygon = new Arc(arc.centre(), radius, arc.from(), arc.angle());
    return Stream.of(0.25, 0.75).map(at -> new Mark(part, polygon.at(at), wall, at, side));
  }

  private static Stream<Mark> along(String part, Segment face, int wall, int side) {
    return IntStream.range(0, PARTS)
        .mapToObj(
            i -> {
              double at = (i + 0.5) / PARTS;
              String name = 2 * i + 1 == PARTS ? part + " middle" : part;
              return new Mark(name, face.at(at), wall, at, side);
            });
  }

  /**
   * The marks of open walls that follow each other from toe to toe: on both faces, because
   * Saint-Venant's stress has the other sign on the other face.
   *
   * @param parts what each wall is, such as {@code flange}
   * @param strips the walls, each starting where the one before ends
   * @return their marks
   */
  static List<Mark> chain(List<String> parts, List<Strip> strips) {
    List<Mark> marks = new ArrayList<>();
    int last = strips.size() - 1;
    for (int i = 0; i <= last; i++) {
      Strip strip = strips.get(i);
      bothFaces(parts.get(i), strip, i).forEach(marks::add);
      if (i == 0 || meetSharply(strips.get(i - 1), strip)) {
        across(i == 0 ? "toe" : "root", strip, i, 0).forEach(marks::add);
      }
      if (i == last || meetSharply(strip, strips.get(i + 1))) {
        across(i == last ? "toe" : "root", strip, i, 1).forEach(marks::add);
      }
    }
    return marks;
  }

  private static boolean meetSharply(Strip one, Strip next) {
    return one.path() instanceof Line && next.path() instanceof Line;
  }

  /** Both faces of a wall at a place along it. */
  static Stream<Mark> across(String part, Strip strip, int wall, double at) {
    return Stream.of(face(part, strip, wall, at, 1), face(part, strip, wall, at, -1));
  }

  /** Along both faces of a wall. */
  static Stream<Mark> bothFaces(String part, Strip strip, int wall) {
    double half = strip.thickness() / 2;
    Segment right = strip.path().aside(half);
    Segment left = strip.path().aside(-half);
    if (strip.path() instanceof Arc arc) {
      int outside = arc.angle() > 0 ? 1 : -1;
      Arc outer = (Arc) (outside > 0 ? right : left);
      Mark inner = face(part + " inside", strip, wall, 0.5, -outside);
      return Stream.concat(around(part, outer, wall, outside), Stream.of(inner));
    }
    return Stream.concat(along(part, right, wall, 1), along(part + " inside", left, wall, -1));
  }

  private static Mark face(String part, Strip strip, int wall, double at, int side) {
    Spot fibre = strip.path().aside(side * strip.thickness() / 2).at(at);
    return new Mark(part, fibre, wall, at, side);
  }
}
