package rungwork.report;

import java.util.List;
import java.util.stream.IntStream;
import rungwork.section.Arc;
import rungwork.section.Properties;
import rungwork.section.Section;
import rungwork.section.Segment;

/** Outlines of sections as places on a drawing, with the beam's x going away from the reader. */
final class Outlines {
  /** Straight pieces that a whole circle is drawn with. */
  private static final int CIRCLE = 96;

  /** Straight pieces of an arc at least. */
  private static final int LEAST = 6;

  private Outlines() {}

  /** Its closed loops, y to the left and z up; holes taken out. */
  static List<List<Spot>> loops(Section section, double scale) {
    return section.net().map(Section.Net::outline).orElse(section.outline()).loops().stream()
        .map(loop -> loop.stream().flatMap(piece -> spots(piece, scale).stream()).toList())
        .toList();
  }

  private static List<Spot> spots(Segment piece, double scale) {
    int steps = piece instanceof Arc arc ? steps(arc) : 1;
    return IntStream.range(0, steps)
        .mapToObj(i -> piece.at((double) i / steps))
        .map(spot -> new Spot(-spot.y() * scale, -spot.z() * scale))
        .toList();
  }

  private static int steps(Arc arc) {
    return Math.max(LEAST, (int) Math.ceil(CIRCLE * Math.abs(arc.angle()) / (2 * Math.PI)));
  }

  /** The room that loops take. */
  static Box around(List<List<Spot>> loops) {
    return loops.stream().flatMap(List::stream).reduce(Box.EMPTY, Box::and, Box::and);
  }

  /**
   * How wide a section is along y [m]; without an outline the width of the solid rectangle with its
   * A and Iz, √(12 Iz/A).
   */
  static double width(Section section) {
    if (section.outline().loops().isEmpty()) {
      Properties p = section.properties();
      return Math.sqrt(12 * p.iz() / p.area());
    }
    return around(loops(section, 1)).width();
  }

  /**
   * How high a section is along z [m]; without an outline the height of the solid rectangle with
   * its A and Iy, √(12 Iy/A).
   */
  static double height(Section section) {
    if (section.outline().loops().isEmpty()) {
      Properties p = section.properties();
      return Math.sqrt(12 * p.iy() / p.area());
    }
    return around(loops(section, 1)).height();
  }
}
