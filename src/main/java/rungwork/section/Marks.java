package rungwork.section;

import java.util.List;

/** Where on the walls of a section the stress is worth knowing. */
final class Marks {
  private Marks() {}

  /**
   * The marks of one piece of an outer edge: the middle of a flat; at a bend the two corners of the
   * tangent polygon around it. No fibre lies outside that polygon, so no direction of bending is
   * missed, and bending about y or z alone is exact.
   *
   * @param edge the piece of the outer edge
   * @param wall the number of the wall under it
   * @return its marks
   */
  static List<Mark> around(Segment edge, int wall) {
    if (edge instanceof Arc arc) {
      double radius = arc.radius() / Math.cos(arc.angle() / 4);
      Arc around = new Arc(arc.centre(), radius, arc.from(), arc.angle());
      return List.of(
          new Mark("corner", around.at(0.25), wall, 0.25, 1),
          new Mark("corner", around.at(0.75), wall, 0.75, 1));
    }
    return List.of(new Mark("wall", edge.at(0.5), wall, 0.5, 1));
  }
}
