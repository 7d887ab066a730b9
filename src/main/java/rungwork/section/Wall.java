package rungwork.section;

/**
 * A flat part of a section's wall between its bends or edges, for width-to-thickness ratios.
 *
 * @param name such as {@code top flange}
 * @param width flat width c [m]
 * @param thickness t [m]
 * @param edge how it is held along its edges
 * @param from its first end, {y, z} of the centre line from the centroid [m]
 * @param to its second end, {y, z} of the centre line from the centroid [m]
 */
public record Wall(
    String name, double width, double thickness, Edge edge, double[] from, double[] to) {
  /** Copies its places. */
  public Wall {
    from = from.clone();
    to = to.clone();
  }

  @Override
  public double[] from() {
    return from.clone();
  }

  @Override
  public double[] to() {
    return to.clone();
  }

  /** A flat part along a centre line, named by the side on which it lies. */
  static Wall between(String part, double thickness, Edge edge, Line line) {
    return new Wall(
        Label.sided(line.at(0.5), part),
        line.length(),
        thickness,
        edge,
        new double[] {line.start().y(), line.start().z()},
        new double[] {line.end().y(), line.end().z()});
  }

  Wall moved(Spot by) {
    Line line = (Line) line().moved(by);
    return withLine(line);
  }

  Wall turned(Turn turn) {
    return withLine((Line) line().turned(turn));
  }

  private Line line() {
    return new Line(new Spot(from[0], from[1]), new Spot(to[0], to[1]));
  }

  private Wall withLine(Line line) {
    Wall renamed = between(Label.part(name), thickness, edge, line);
    return new Wall(renamed.name, width, thickness, edge, renamed.from, renamed.to);
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
