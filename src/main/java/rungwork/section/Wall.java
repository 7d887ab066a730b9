package rungwork.section;

import rungwork.fault.Guard;

/**
 * A flat part of a section's wall between its bends or edges, for width-to-thickness ratios.
 *
 * @param name such as {@code top flange}
 * @param width flat width c [m]
 * @param thickness t [m]
 * @param edge how it is held along its edges
 * @param from its first end, on the centre line, from the centroid
 * @param to its second end, on the centre line, from the centroid
 */
public record Wall(String name, double width, double thickness, Edge edge, Spot from, Spot to) {
  /** Refuses what is not finite. */
  public Wall {
    Guard.finite("width of " + name, width);
    Guard.finite("thickness of " + name, thickness);
  }

  /** A flat part along a centre line, named by the side on which it lies. */
  static Wall between(String part, double thickness, Edge edge, Line line) {
    String name = Label.sided(line.at(0.5), part);
    return new Wall(name, line.length(), thickness, edge, line.start(), line.end());
  }

  /**
   * A part of the wall.
   *
   * @param start where it starts, from 0 at {@code from} to 1 at {@code to}
   * @param end where it ends
   * @return the part
   */
  public Wall part(double start, double end) {
    Guard.finite("start of a part of " + name, start);
    Guard.finite("end of a part of " + name, end);
    Line line = new Line(from, to);
    return new Wall(name, (end - start) * width, thickness, edge, line.at(start), line.at(end));
  }

  Wall moved(Spot by) {
    return placed(from.plus(by), to.plus(by));
  }

  Wall turned(Turn turn) {
    return placed(turn.of(from), turn.of(to));
  }

  private Wall placed(Spot newFrom, Spot newTo) {
    String sided = Label.sided(new Line(newFrom, newTo).at(0.5), Label.part(name));
    return new Wall(sided, width, thickness, edge, newFrom, newTo);
  }

  /** How a wall is held along its long edges. */
  public enum Edge {
    /** Held along both edges. */
    INTERNAL,
    /** Held along one edge, the other free. */
    OUTSTAND,
    /** The wall of a round tube; its width is the outside diameter. */
    ROUND
  }
}
